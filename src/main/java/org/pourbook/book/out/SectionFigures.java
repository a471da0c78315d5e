package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.book.Heading;
import org.pourbook.book.InputSheet;
import org.pourbook.job.GivenSheet;
import org.pourbook.job.GivenSheet.GivenRow;
import org.pourbook.job.Section;
import org.pourbook.takeoff.Quantity;
import org.pourbook.takeoff.SectionFigure;
import org.pourbook.takeoff.TakeOff;

/**
 * The sizes of Given Sections in figures: as the tool read the cell for as long as that stands
 * unchanged, else what is written there now.
 */
final class SectionFigures {

  static final String WASTE = "Waste %";

  private final GivenSheet given;
  private final Map<String, Of> sections = new HashMap<>();

  private record Of(TakeOff takeOff, Section section) {}

  SectionFigures(GivenSheet given, List<TakeOff> takeOffs) {
    this.given = given;
    for (TakeOff takeOff : takeOffs) {
      for (Section section : takeOff.job().sections()) {
        sections.put(key(section), new Of(takeOff, section));
      }
    }
  }

  private static String key(Section section) {
    return section.place().sheet() + "\n" + (section.place().row() + 1);
  }

  private Optional<Of> of(GivenRow row) {
    return Optional.ofNullable(sections.get(row.fromSheet() + "\n" + row.fromRow()));
  }

  static String inFigures(String heading) {
    return heading + InputSheet.IN_FIGURES;
  }

  /** Returns a column for each size that the input has a column for. */
  List<Column<GivenRow>> columns() {
    List<Column<GivenRow>> columns = new ArrayList<>();
    for (SectionFigure figure : SectionFigure.values()) {
      heading(figure.heading()).ifPresent(heading -> columns.add(column(figure, heading)));
    }
    heading(WASTE)
        .ifPresent(
            heading ->
                columns.add(
                    column(
                        WASTE,
                        at -> of(at.record()).map(SectionFigures::waste).orElse(NONE),
                        at -> plain(at, heading))));
    return columns;
  }

  private static final OptionalDouble NONE = OptionalDouble.empty();

  private Optional<String> heading(String column) {
    return given.headings().stream()
        .filter(heading -> Heading.key(heading).equals(Heading.key(column)))
        .findFirst();
  }

  private interface Read {
    OptionalDouble as(At<GivenRow> at);
  }

  private interface Written {
    Now now(At<GivenRow> at);
  }

  /** The given cell, its copy, and the formula that reads text in it. */
  private record Now(String cell, String copy, String reading) {}

  private Column<GivenRow> column(SectionFigure figure, String heading) {
    return column(
        figure.heading(),
        at ->
            of(at.record())
                .map(one -> figure.written(one.section(), one.takeOff().job().units()))
                .orElse(NONE),
        at -> {
          boolean feet =
              figure.isInFeet()
                  && of(at.record()).filter(o -> !o.takeOff().job().units().isMetric()).isPresent();
          return feet ? feet(at, heading) : plain(at, heading);
        });
  }

  private static Column<GivenRow> column(String name, Read read, Written written) {
    return Column.onScreen(
        Column.of(
            inFigures(name),
            Look.NUMBER,
            9,
            at -> {
              OptionalDouble as = read.as(at);
              return as.isEmpty() ? Cell.BLANK : cell(written.now(at), as.getAsDouble());
            }));
  }

  private static Cell cell(Now now, double as) {
    String figure = Arithmetic.number(as);
    return Cell.formula(
        "IF("
            + now.cell
            + "="
            + now.copy
            + ","
            + figure
            + ",IF(ISNUMBER("
            + now.cell
            + "),"
            + now.cell
            + ",IFERROR("
            + now.reading
            + ","
            + figure
            + ")))",
        as);
  }

  private static Now plain(At<GivenRow> at, String heading) {
    String cell = at.cell(heading);
    return new Now(
        cell,
        at.cell(GivenTable.copyOf(heading)),
        number(cell, "SUBSTITUTE(" + cell + ",\"%\",\"\")"));
  }

  /** Feet and inches: {@code 13'-7 1/2"}. */
  private static Now feet(At<GivenRow> at, String heading) {
    String cell = at.cell(heading);
    String mark = "FIND(\"'\"," + cell + ")";
    return new Now(
        cell,
        at.cell(GivenTable.copyOf(heading)),
        "VALUE(LEFT("
            + cell
            + ","
            + mark
            + "-1))+"
            + number(cell, "MID(" + cell + "," + mark + "+1,12)")
            + "/12");
  }

  /**
   * Returns the formula that makes a number of {@code 7}, {@code 7-1/2"} and {@code 1/2}; the last
   * as {@code 0 1/2}, since programs make a date of a fraction that stands alone.
   *
   * @param cell where there is a slash if {@code text} has one
   * @param text a formula
   */
  private static String number(String cell, String text) {
    String bare = "TRIM(SUBSTITUTE(SUBSTITUTE(" + text + ",\"-\",\" \"),\"\"\"\",\"\"))";
    return "VALUE(IF(ISERROR(FIND(\"/\","
        + cell
        + ")),\"0\",IF(ISERROR(FIND(\" \","
        + bare
        + ")),\"0 \",\"\"))&"
        + bare
        + ")";
  }

  /** Returns the waste of a section's concrete, as written or by the rule (CON-6). */
  private static OptionalDouble waste(Of one) {
    return one.takeOff().quantities().stream()
        .filter(quantity -> quantity.section().equals(one.section().code()))
        .map(Quantity::allowancePercent)
        .filter(OptionalDouble::isPresent)
        .findFirst()
        .orElse(NONE);
  }
}
