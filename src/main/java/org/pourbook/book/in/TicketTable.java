package org.pourbook.book.in;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.pourbook.book.TicketColumn;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.measure.Money;
import org.pourbook.problem.Place;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;
import org.pourbook.takeoff.MaterialKey;
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
      new RowReader(found.get(), row).ticket().ifPresent(tickets);
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

  /** Reads one row; the first cell that cannot be used of each column is a problem. */
  private final class RowReader {

    private final TicketHeadings.Found at;
    private final RawRow row;
    private boolean sound = true;

    RowReader(TicketHeadings.Found at, RawRow row) {
      this.at = at;
      this.row = row;
    }

    Optional<Ticket> ticket() {
      String charge = TicketCells.charge(text(TicketColumn.CHARGE));
      Ticket ticket =
          new Ticket(
              required(TicketColumn.TICKET),
              value(
                  TicketColumn.DATE,
                  TicketCells::date,
                  "a date, such as 2027-04-13, or a heading Date (m/d/y)"),
              required(TicketColumn.SUPPLIER),
              required(TicketColumn.JOB),
              key(charge),
              text(TicketColumn.ITEM),
              quantity(charge),
              unit(),
              text(TicketColumn.TRUCK),
              time(TicketColumn.BATCHED),
              time(TicketColumn.ARRIVED),
              time(TicketColumn.DISCHARGED),
              value(TicketColumn.WATER_ADDED, TicketCells::litres, "water in gal or L")
                  .orElse(OptionalDouble.empty()),
              number(TicketColumn.UNIT_PRICE),
              number(TicketColumn.AMOUNT).map(Money::rounded),
              charge,
              text(TicketColumn.INVOICE),
              new Place(place, row.index(), -1));
      return sound ? Optional.of(ticket) : Optional.empty();
    }

    private String text(TicketColumn column) {
      GivenCell cell = at.cell(row, column);
      if (cell instanceof GivenCell.Error) {
        refuse(column, "a text");
      }
      return CellWords.of(cell);
    }

    private String required(TicketColumn column) {
      String words = text(column);
      if (words.isEmpty()) {
        refuse(column, column.label());
      }
      return words;
    }

    /** A plant that prints a mix and no material sells concrete by it. */
    private MaterialKey key(String charge) {
      String material = text(TicketColumn.MATERIAL);
      String size = text(TicketColumn.SIZE);
      boolean mix = at.isMix() && charge.isEmpty() && material.isEmpty() && !size.isEmpty();
      return new MaterialKey(mix ? "concrete" : material, size);
    }

    /** A fee without a number is one fee. */
    private double quantity(String charge) {
      if (!charge.isEmpty() && at.cell(row, TicketColumn.QUANTITY) instanceof GivenCell.Blank) {
        return 1;
      }
      Optional<BigDecimal> quantity = number(TicketColumn.QUANTITY);
      if (sound && quantity.isEmpty()) {
        refuse(TicketColumn.QUANTITY, "a number");
      }
      return quantity.map(BigDecimal::doubleValue).orElse(0.0);
    }

    private String unit() {
      String unit = text(TicketColumn.UNIT);
      return unit.isEmpty() ? at.bracket(TicketColumn.QUANTITY) : unit;
    }

    private Optional<LocalTime> time(TicketColumn column) {
      return value(column, (cell, bracket) -> TicketCells.time(cell), "a time, such as 7:05");
    }

    private Optional<BigDecimal> number(TicketColumn column) {
      return value(column, (cell, bracket) -> TicketCells.number(cell), "a number");
    }

    private <T> Optional<T> value(
        TicketColumn column, BiFunction<GivenCell, String, Optional<T>> reader, String expected) {
      GivenCell cell = at.cell(row, column);
      if (cell instanceof GivenCell.Blank) {
        return Optional.empty();
      }
      Optional<T> value =
          cell instanceof GivenCell.Error
              ? Optional.empty()
              : reader.apply(cell, at.bracket(column));
      if (value.isEmpty()) {
        refuse(column, expected);
      }
      return value;
    }

    private void refuse(TicketColumn column, String expected) {
      sound = false;
      problems.add(
          new Problem(
              new Place(place, row.index(), at.column(column)),
              CellWords.of(at.cell(row, TicketColumn.JOB)),
              CellWords.found(at.cell(row, column)),
              expected,
              Effect.ROW_LEFT_OUT));
    }
  }
}
