package org.pourbook.takeoff;

import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.outline.Figure;
import org.pourbook.outline.Figures;
import org.pourbook.takeoff.rule.BarMats;
import org.pourbook.takeoff.rule.BarSupports;

/** Supports under a mat of bars or mesh (BAR-7). */
final class Supports {

  private Supports() {}

  /**
   * Adds the supports of a section.
   *
   * @param inset how far the mat stays from the outline
   */
  static void add(
      SteelJob steel, Section section, BarsOf bars, Length spacing, Length height, Length inset) {
    String size = size(height, steel);
    if (section.shape() instanceof Shape.Rectangle rectangle) {
      Length length = BarMats.between(rectangle.length(), inset);
      Length width = BarMats.between(rectangle.width(), inset);
      int inLength = BarSupports.inRow(length, spacing);
      int inWidth = BarSupports.inRow(width, spacing);
      int count = BarSupports.underMat(length, width, spacing);
      String working = inLength + " × " + inWidth + " at " + steel.show(spacing);
      bars.counted("bar supports", Material.BAR_SUPPORT, size, count, working, "BAR-7");
      return;
    }
    Figure figure = Figures.of(section);
    int rows = 0;
    int count = 0;
    for (Figure.Chord row : figure.lines(true, spacing.metres(), inset.metres())) {
      count += BarSupports.inRow(Length.ofMetres(row.lengthM()), spacing);
      rows++;
    }
    String working = count + " in " + rows + " rows at " + steel.show(spacing);
    bars.counted("bar supports", Material.BAR_SUPPORT, size, count, working, "BAR-7");
  }

  /** Returns the trade size of a support: {@code 2 in}, {@code 50 mm}. */
  static String size(Length height, SteelJob steel) {
    return steel.units().isMetric()
        ? LengthFormat.millimetres(height)
        : LengthFormat.inches(height).replace("\"", " in");
  }
}
