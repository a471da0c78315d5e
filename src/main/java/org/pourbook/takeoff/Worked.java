package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.job.Section;

/**
 * A figure in base units (m, m2, m3, kg) with the arithmetic by which it follows from what the
 * builder wrote: a rule that computes with these tells its formula by computing.
 */
public sealed interface Worked {

  double value();

  /** Returns whether it follows from cells and constants alone, all the way. */
  boolean isLive();

  /** A figure that rests on a layout, an outline or a plan: no short formula gives it. */
  record Laid(double value) implements Worked {
    @Override
    public boolean isLive() {
      return false;
    }
  }

  /** A figure that a rule states. */
  record Constant(double value) implements Worked {
    @Override
    public boolean isLive() {
      return true;
    }
  }

  /**
   * A figure that a cell of the section gives, or its default.
   *
   * @param written the figure as a bare number in that cell
   * @param perUnit base units in one unit of the cell
   */
  record Given(Section section, SectionFigure figure, double written, double perUnit)
      implements Worked {
    @Override
    public double value() {
      return written * perUnit;
    }

    @Override
    public boolean isLive() {
      return true;
    }
  }

  /**
   * The amount of another quantity of the same job.
   *
   * @param what the quantity's name
   */
  record Other(String section, String what, double value) implements Worked {
    @Override
    public boolean isLive() {
      return true;
    }
  }

  record Sum(List<Worked> parts) implements Worked {
    public Sum {
      parts = List.copyOf(parts);
    }

    @Override
    public double value() {
      return parts.stream().mapToDouble(Worked::value).sum();
    }

    @Override
    public boolean isLive() {
      return parts.stream().allMatch(Worked::isLive);
    }
  }

  record Product(List<Worked> factors) implements Worked {
    public Product {
      factors = List.copyOf(factors);
    }

    @Override
    public double value() {
      double product = 1;
      for (Worked factor : factors) {
        product *= factor.value();
      }
      return product;
    }

    @Override
    public boolean isLive() {
      return factors.stream().allMatch(Worked::isLive);
    }
  }

  /** The smaller of two figures. */
  record Least(Worked one, Worked other) implements Worked {
    @Override
    public double value() {
      return Math.min(one.value(), other.value());
    }

    @Override
    public boolean isLive() {
      return one.isLive() && other.isLive();
    }
  }

  static Worked of(double value) {
    return new Constant(value);
  }

  default Worked plus(Worked other) {
    return new Sum(List.of(this, other));
  }

  default Worked minus(Worked other) {
    return plus(other.times(-1));
  }

  default Worked times(Worked other) {
    List<Worked> factors = new ArrayList<>();
    for (Worked one : List.of(this, other)) {
      if (one instanceof Product product) {
        factors.addAll(product.factors());
      } else {
        factors.add(one);
      }
    }
    return new Product(factors);
  }

  default Worked orLess(Worked other) {
    return new Least(this, other);
  }

  default Worked times(double factor) {
    return times(of(factor));
  }

  /** Returns the same figure where another way of working it out gives it too, else a bare one. */
  static Worked orLaid(Worked byCells, double figure) {
    boolean same = Math.abs(byCells.value() - figure) <= 1e-9 * Math.abs(figure);
    return same && byCells.isLive() ? byCells : new Laid(figure);
  }
}
