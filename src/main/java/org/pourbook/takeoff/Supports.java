package org.pourbook.takeoff;

import java.util.List;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.takeoff.rule.BarMats;
import org.pourbook.takeoff.rule.BarSupports;

/** Supports under a mat of bars or mesh (BAR-7). */
final class Supports {

  private Supports() {}

  /**
   * Adds the supports of a section.
   *
   * @param inset how far the mat stays from the outline
   * @param gaps recesses that interrupt the mat both ways: their bars lie on supports of their own
   */
  static void add(
      SteelJob steel,
      Section section,
      BarsOf bars,
      Length spacing,
      Length height,
      Length inset,
      List<Section> gaps) {
    String size = size(height, steel);
    if (section.shape() instanceof Shape.Rectangle rectangle && gaps.isEmpty()) {
      Length length = BarMats.between(rectangle.length(), inset);
      Length width = BarMats.between(rectangle.width(), inset);
      int inLength = BarSupports.inRow(length, spacing);
      int inWidth = BarSupports.inRow(width, spacing);
      int count = BarSupports.underMat(length, width, spacing);
      String working = inLength + " × " + inWidth + " at " + steel.show(spacing);
      bars.counted("bar supports", Material.BAR_SUPPORT, size, count, working, "BAR-7");
      return;
    }
    List<MatLine> rows = MatLine.of(section, true, spacing, inset);
    for (Section recess : gaps) {
      rows = rows.stream().flatMap(Steps.interruption(section, recess, true, inset)).toList();
    }
    int whole = rows.stream().mapToInt(row -> BarSupports.inRow(row.length(), spacing)).sum();
    double share = Steps.unplacedShare(section, gaps);
    int count = (int) StrictMath.ceil(whole * (1 - share));
    String working = whole + " in " + rows.size() + " rows at " + steel.show(spacing);
    String clear =
        gaps.isEmpty() ? "" : share > 0 ? ", less the recesses' share" : ", clear of the recesses";
    bars.counted("bar supports", Material.BAR_SUPPORT, size, count, working + clear, "BAR-7");
  }

  /** Returns the trade size of a support: {@code 2 in}, {@code 50 mm}. */
  static String size(Length height, SteelJob steel) {
    return steel.units().isMetric()
        ? LengthFormat.millimetres(height)
        : LengthFormat.inches(height).replace("\"", " in");
  }
}
