package org.pourbook.takeoff.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A body between two levels whose level area is known, cut into slices within which the area is
 * quadratic, so that d/6·(A₀ + 4A½ + A₁) is exact in each.
 */
public record Prismatoid(List<Slice> slices) {

  /** Difference of volume, relative to the body's box, below which a slice counts as exact. */
  private static final double TOLERANCE = 1e-12;

  /** Halvings of a slice: 2⁻⁴⁰ of the depth is less than a nanometre. */
  private static final int DEEPEST = 40;

  /** Slices at most, where the area is too rough for the tolerance. */
  private static final int MOST_SLICES = 4096;

  /** Steps of a bisection of doubles. */
  private static final int BISECTIONS = 60;

  public Prismatoid {
    slices = List.copyOf(slices);
  }

  /** A layer with its area at the bottom, half way up and at the top [m, m2]. */
  public record Slice(double depthM, double bottomM2, double middleM2, double topM2) {
    public double volumeM3() {
      return depthM / 6 * (bottomM2 + 4 * middleM2 + topM2);
    }

    /** Returns whether the area is the same all the way. */
    public boolean isStraight() {
      return bottomM2 == middleM2 && middleM2 == topM2;
    }
  }

  /** Returns the volume [m3]. */
  public double volumeM3() {
    return slices.stream().mapToDouble(Slice::volumeM3).sum();
  }

  /**
   * Returns the body between two levels whose area never falls with the level and never exceeds
   * {@code fullM2}; it is split where the full area is reached.
   */
  static Prismatoid of(DoubleUnaryOperator areaM2, double fullM2, double fromM, double toM) {
    List<Slice> slices = new ArrayList<>();
    if (toM > fromM) {
      double fullAt = levelOfFull(areaM2, fullM2, fromM, toM);
      slice(areaM2, fromM, fullAt, fullM2, DEEPEST, slices);
      if (fullAt < toM) {
        slices.add(new Slice(toM - fullAt, fullM2, fullM2, fullM2));
      }
    }
    return new Prismatoid(slices);
  }

  /** The level from which the area is full; {@code toM} where it stays below. */
  private static double levelOfFull(
      DoubleUnaryOperator areaM2, double fullM2, double fromM, double toM) {
    if (areaM2.applyAsDouble(fromM) >= fullM2) {
      return fromM;
    }
    if (areaM2.applyAsDouble(toM) < fullM2) {
      return toM;
    }
    double below = fromM;
    double full = toM;
    for (int i = 0; i < BISECTIONS; i++) {
      double middle = (below + full) / 2;
      if (areaM2.applyAsDouble(middle) < fullM2) {
        below = middle;
      } else {
        full = middle;
      }
    }
    return full;
  }

  private static void slice(
      DoubleUnaryOperator areaM2,
      double fromM,
      double toM,
      double fullM2,
      int halvings,
      List<Slice> slices) {
    double depth = toM - fromM;
    if (depth <= 0) {
      return;
    }
    double middle = fromM + depth / 2;
    Slice whole = between(areaM2, fromM, toM);
    double halves =
        between(areaM2, fromM, middle).volumeM3() + between(areaM2, middle, toM).volumeM3();
    boolean exact = Math.abs(halves - whole.volumeM3()) <= TOLERANCE * fullM2 * depth;
    if (exact || halvings == 0 || slices.size() >= MOST_SLICES) {
      slices.add(whole);
    } else {
      slice(areaM2, fromM, middle, fullM2, halvings - 1, slices);
      slice(areaM2, middle, toM, fullM2, halvings - 1, slices);
    }
  }

  private static Slice between(DoubleUnaryOperator areaM2, double fromM, double toM) {
    return new Slice(
        toM - fromM,
        areaM2.applyAsDouble(fromM),
        areaM2.applyAsDouble(fromM + (toM - fromM) / 2),
        areaM2.applyAsDouble(toM));
  }
}
