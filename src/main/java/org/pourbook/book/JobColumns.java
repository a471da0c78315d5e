package org.pourbook.book;

import static org.pourbook.book.ColumnGroup.BUYING;
import static org.pourbook.book.ColumnGroup.NOTES;
import static org.pourbook.book.ColumnGroup.POUR;
import static org.pourbook.book.ColumnGroup.WHAT;
import static org.pourbook.book.Columns.choice;
import static org.pourbook.book.Columns.code;
import static org.pourbook.book.Columns.count;
import static org.pourbook.book.Columns.feet;
import static org.pourbook.book.Columns.job;
import static org.pourbook.book.Columns.percent;
import static org.pourbook.book.Columns.text;

import java.util.List;
import java.util.stream.Stream;

/** Columns of the sheets Jobs, Pours and Practice. */
final class JobColumns {

  private static final List<String> PLACINGS = List.of("chute", "pump", "barrow");

  static final List<InputColumn> JOBS =
      with(
          List.of(
              code("Job", "short code, unique").mustBeGiven(),
              text(WHAT, "Description", "what is poured"),
              text(WHAT, "Customer", "for whom"),
              text(WHAT, "Site", "address for the drivers"),
              Columns.of(POUR, "Pour date", CellKind.DATE, "first pour; later ones on sheet Pours")
                  .usually("none: orders carry no dates"),
              choice(WHAT, "Units", List.of("ft-in", "m"), "of this job's bare numbers")
                  .usually("ft-in"),
              Columns.of(POUR, "Mix", CellKind.SIZE, "concrete as the price book has it: 3000 psi")
                  .usually("the only one in the price book"),
              choice(POUR, "Placing", PLACINGS, "how the concrete gets into the forms")
                  .usually("chute"),
              text(
                      BUYING,
                      "Deliver to",
                      "site, or a name shared by jobs whose orders may be pooled")
                  .usually("site"),
              percent(BUYING, "Tax %", "sales tax where the goods land").usually("the supplier's")),
          Columns.weather(),
          text(NOTES, "Notes", "anything"));

  static final List<InputColumn> POURS =
      with(
          List.of(
              job(),
              count(WHAT, "Pour", "number of the pour, from 1").mustBeGiven(),
              Columns.of(POUR, "Date", CellKind.DATE, "day of the pour").usually("the job's"),
              Columns.of(POUR, "Start", CellKind.TIME, "first truck").usually("7:00"),
              Columns.of(POUR, "Mix", CellKind.SIZE, "concrete of this pour").usually("the job's"),
              choice(POUR, "Placing", PLACINGS, "of this pour").usually("the job's"),
              count(POUR, "Crew", "people placing").usually("5"),
              text(POUR, "Slump", "as ordered, e.g. 5 in"),
              percent(POUR, "Air %", "as ordered"),
              feet(POUR, "Hose length", "of the pump").zeroOrMore()),
          Columns.weather(),
          text(NOTES, "Notes", "anything"));

  static final List<InputColumn> PRACTICE =
      List.of(
          code("Job", "blank = every job"),
          text(
                  WHAT,
                  "Setting",
                  "as on this sheet of a template, e.g. Waste allowance; Ahead of pour, bar")
              .mustBeGiven(),
          text(WHAT, "Value", "blank = the default"),
          text(WHAT, "Default", "not read"),
          text(WHAT, "Unit", "of a bare number in Value"),
          text(WHAT, "Source", "not read"),
          text(NOTES, "Notes", "anything"));

  private JobColumns() {}

  private static List<InputColumn> with(
      List<InputColumn> first, List<InputColumn> weather, InputColumn last) {
    return Stream.of(first, weather, List.of(last)).flatMap(List::stream).toList();
  }
}
