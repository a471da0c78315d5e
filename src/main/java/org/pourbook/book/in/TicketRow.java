package org.pourbook.book.in;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import org.pourbook.book.TicketColumn;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.measure.Greatest;
import org.pourbook.measure.Money;
import org.pourbook.measure.NumberText;
import org.pourbook.problem.Place;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.ticket.Ticket;

/** Reads one row; the first cell that cannot be used of each column is a problem. */
final class TicketRow {

  private final String place;
  private final List<Problem> problems;
  private final TicketHeadings.Found at;
  private final RawRow row;
  private boolean sound = true;

  TicketRow(String place, TicketHeadings.Found at, RawRow row, List<Problem> problems) {
    this.place = place;
    this.problems = problems;
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
    BigDecimal billed = ticket.unitPrice().orElse(BigDecimal.ZERO);
    if (Math.abs(ticket.quantity()) * billed.abs().doubleValue() > Greatest.LINE.doubleValue()) {
      refuse(
          TicketColumn.UNIT_PRICE,
          "a price that comes to at most " + NumberText.text(Greatest.LINE) + " with the quantity");
    }
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
    BigDecimal most = column == TicketColumn.QUANTITY ? Greatest.QUANTITY : Greatest.MONEY;
    Predicate<BigDecimal> within = number -> number.abs().compareTo(most) <= 0;
    Optional<BigDecimal> number = TicketCells.number(at.cell(row, column));
    return value(
        column,
        (cell, bracket) -> number.filter(within),
        number.filter(within.negate()).isPresent()
            ? "a number, at most " + NumberText.text(most)
            : "a number");
  }

  private <T> Optional<T> value(
      TicketColumn column, BiFunction<GivenCell, String, Optional<T>> reader, String expected) {
    GivenCell cell = at.cell(row, column);
    if (cell instanceof GivenCell.Blank) {
      return Optional.empty();
    }
    Optional<T> value =
        cell instanceof GivenCell.Error ? Optional.empty() : reader.apply(cell, at.bracket(column));
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
