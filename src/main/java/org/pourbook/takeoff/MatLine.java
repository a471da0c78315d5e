package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.outline.Figure.Chord;
import org.pourbook.outline.Figures;
import org.pourbook.takeoff.rule.BarMats;

/**
 * Where one bar of a mat lies: from and to along the bar, and how far from the plan's other axis.
 */
record MatLine(Length from, Length to, Length offset) {

  Length length() {
    return to.minus(from);
  }

  /**
   * Returns the bars of a section's mat in one direction: of a rectangle exactly, of other shapes
   * clipped to the outline moved in by the cover (BAR-1).
   */
  static List<MatLine> of(Section section, boolean along, Length spacing, Length cover) {
    if (section.shape() instanceof Shape.Rectangle rectangle) {
      return along
          ? ofRectangle(rectangle.length(), rectangle.width(), spacing, cover)
          : ofRectangle(rectangle.width(), rectangle.length(), spacing, cover);
    }
    return Figures.of(section).lines(along, spacing.metres(), cover.metres()).stream()
        .map(c -> new MatLine(computed(c.fromM()), computed(c.toM()), computed(c.offsetM())))
        .toList();
  }

  private static List<MatLine> ofRectangle(Length run, Length width, Length spacing, Length cover) {
    if (!BarMats.between(run, cover).isPositive()) {
      return List.of();
    }
    int bars = BarMats.barsAcross(width, cover, spacing);
    Length to = run.minus(cover);
    if (bars == 1) {
      return List.of(new MatLine(cover, to, width.dividedBy(2)));
    }
    Length between = BarMats.between(width, cover);
    return IntStream.range(0, bars)
        .mapToObj(i -> new MatLine(cover, to, cover.plus(between.times(i).dividedBy(bars - 1L))))
        .toList();
  }

  /** To the micrometre: below it two like chords differ by the noise of floating point. */
  private static Length computed(double metres) {
    return new Length(Math.round(metres * 1e6) * 1000);
  }

  /** Returns what a gap, widened by the cover all round, leaves of this bar. */
  List<MatLine> interruptedBy(Gap gap, Length cover) {
    boolean beside =
        offset.compareTo(gap.low().minus(cover)) <= 0
            || offset.compareTo(gap.high().plus(cover)) >= 0;
    Length stop = gap.from().minus(cover);
    Length start = gap.to().plus(cover);
    if (beside || to.compareTo(stop) <= 0 || from.compareTo(start) >= 0) {
      return List.of(this);
    }
    List<MatLine> left = new ArrayList<>();
    if (stop.isMoreThan(from)) {
      left.add(new MatLine(from, stop, offset));
    }
    if (to.isMoreThan(start)) {
      left.add(new MatLine(start, to, offset));
    }
    return left;
  }

  /** Returns what chords of a plan, in order along this bar, leave of it. */
  List<MatLine> without(List<Chord> taken) {
    List<MatLine> left = new ArrayList<>();
    Length start = from;
    for (Chord chord : taken) {
      Length stop = computed(chord.fromM()).min(to);
      if (stop.isMoreThan(start)) {
        left.add(new MatLine(start, stop, offset));
      }
      start = start.max(computed(chord.toM()));
    }
    if (to.isMoreThan(start)) {
      left.add(new MatLine(start, to, offset));
    }
    return left;
  }

  /** Returns whether a bar of the other direction crosses this one. */
  boolean crosses(MatLine other) {
    return within(other.offset, from, to) && within(offset, other.from, other.to);
  }

  private static boolean within(Length value, Length low, Length high) {
    return !value.isLessThan(low) && !value.isMoreThan(high);
  }

  /** A rectangle that bars do not run through: along them from, to; across them low, high. */
  record Gap(Length from, Length to, Length low, Length high) {}
}
