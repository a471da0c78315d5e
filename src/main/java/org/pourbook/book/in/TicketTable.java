package org.pourbook.book.in;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.pourbook.book.TicketColumn;
import org.pourbook.problem.Place;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;
import org.pourbook.ticket.Ticket;

/** Makes tickets of the rows of one file or sheet, one after the other as they are read. */
final class TicketTable implements Consumer<RawRow> {

  /** Headings stand below a title at most so far down. */
  private static final int HEADINGS_WITHIN = 40;

  private final String place;
  private final TicketHeadings headings;
  private final Consumer<Ticket> tickets;
  private final List<Problem> problems;
  private Optional<TicketHeadings.Found> found = Optional.empty();
  private Optional<TicketHeadings.Found> best = Optional.empty();

  TicketTable(
      String place, TicketHeadings headings, Consumer<Ticket> tickets, List<Problem> problems) {
    this.place = place;
    this.headings = headings;
    this.tickets = tickets;
    this.problems = problems;
  }

  @Override
  public void accept(RawRow row) {
    if (found.isPresent()) {
      new TicketRow(place, found.get(), row, problems).ticket().ifPresent(tickets);
    } else if (row.index() < HEADINGS_WITHIN) {
      TicketHeadings.Found here = headings.in(row);
      if (here.isComplete()) {
        found = Optional.of(here);
        here.doubled().forEach(column -> noteDoubled(row, column));
      } else if (best.isEmpty() || here.missing().size() < best.get().missing().size()) {
        best = Optional.of(here);
      }
    }
  }

  private void noteDoubled(RawRow row, TicketColumn column) {
    problems.add(
        new Problem(
            new Place(place, row.index(), -1),
            "",
            "two columns that may be " + column.label(),
            "a row of Ticket columns that names the one; the first is used",
            Effect.NOTE));
  }

  /** Returns whether the headings were found. */
  boolean isTable() {
    return found.isPresent();
  }

  /** Returns whether it has headings of tickets, though not all that are required. */
  boolean isLike() {
    return best.filter(row -> row.columns().size() > 1).isPresent();
  }

  /** Notes a sheet that holds no tickets. */
  void noteUnread() {
    problems.add(
        new Problem(
            Place.ofSheet(place),
            "",
            "no headings of tickets",
            "a sheet of tickets; this one is not read",
            Effect.NOTE));
  }

  /** Reports the required columns that no heading names. */
  void askForHeadings() {
    Optional<String> between = best.flatMap(row -> between(row.row()));
    if (between.isPresent()) {
      problems.add(
          new Problem(
              new Place(place, best.orElseThrow().row().index(), -1),
              "",
              between.get() + " between the cells",
              "commas: save it as CSV UTF-8 with commas, or as a workbook",
              Effect.ROW_LEFT_OUT));
      return;
    }
    String missing =
        best.map(TicketHeadings.Found::missing).orElse(List.of()).stream()
            .map(TicketColumn::label)
            .collect(Collectors.joining(", "));
    problems.add(
        new Problem(
            best.map(row -> new Place(place, row.row().index(), -1)).orElse(Place.ofSheet(place)),
            "",
            missing.isEmpty() ? "nothing" : "no column for " + missing,
            "headings Ticket, Supplier, Job, Quantity, or a row of Ticket columns for each",
            Effect.ROW_LEFT_OUT));
  }

  /** Returns what stands between the cells of a row that is one cell to a reader of commas. */
  private static Optional<String> between(RawRow row) {
    String words = CellWords.of(row.cell(0));
    if (row.cells().size() > 1 || words.indexOf(';') < 0 && words.indexOf('\t') < 0) {
      return Optional.empty();
    }
    return Optional.of(words.indexOf(';') < 0 ? "tabs" : "semicolons");
  }
}
