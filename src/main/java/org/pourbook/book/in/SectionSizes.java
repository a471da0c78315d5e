package org.pourbook.book.in;

import java.util.stream.Stream;
import org.pourbook.job.Edge;
import org.pourbook.job.Section;
import org.pourbook.measure.Greatest;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.measure.NumberText;
import org.pourbook.measure.Unit;
import org.pourbook.outline.Figure;
import org.pourbook.outline.Figures;

/** Checks what the sizes of a section come to together, each of them being within its bounds. */
final class SectionSizes {

  private SectionSizes() {}

  /** Reports a section that is, with those alike, greater than anything that is poured by hand. */
  static void check(Section section, Cells cells) {
    Figure figure = Figures.of(section.shape());
    Length depth = section.edge().map(Edge::depth).orElse(section.thickness());
    boolean metric = cells.units().isMetric();
    check(section, cells, figure.perimeterM(), Greatest.RUN_M, metric ? Unit.M : Unit.FT);
    check(section, cells, figure.areaM2(), Greatest.AREA_M2, metric ? Unit.M2 : Unit.FT2);
    check(
        section,
        cells,
        figure.areaM2() * depth.metres(),
        Greatest.VOLUME_M3,
        metric ? Unit.M3 : Unit.YD3);
    boolean boards = !section.formed().isNone() && !section.takesTube();
    if (boards && section.formHeight().isMoreThan(Greatest.FORM)) {
      cells.refuse(
          formHeading(cells),
          "a formed side that is at most "
              + LengthFormat.of(Greatest.FORM, cells.units())
              + " high; higher ones need other forms");
    }
  }

  /** Returns the cell that says how high sides are: each stands for those after it. */
  private static String formHeading(Cells cells) {
    return Stream.of("Form height", "Drop", "Edge depth")
        .filter(heading -> !cells.isBlank(heading))
        .findFirst()
        .orElse("Thickness");
  }

  private static void check(Section section, Cells cells, double one, double most, Unit unit) {
    if (one * section.count() <= most || !cells.isSound()) {
      return;
    }
    String what =
        switch (unit.dimension()) {
          case LENGTH -> " of sides";
          case AREA -> " in plan";
          default -> " of concrete";
        };
    cells.refuse(
        one <= most ? "Count" : sizeHeading(cells),
        "a section that has, with those alike, at most "
            + NumberText.text(NumberText.of(Math.rint(unit.fromBase(most))))
            + " "
            + unit.label()
            + what);
  }

  private static String sizeHeading(Cells cells) {
    if (!cells.isBlank("Length")) {
      return "Length";
    }
    return cells.isBlank("Diameter") ? "Section" : "Diameter";
  }
}
