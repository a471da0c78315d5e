package org.pourbook.book.in;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.pourbook.book.CellKind;
import org.pourbook.book.ColumnUnit;
import org.pourbook.book.Heading;
import org.pourbook.book.InputColumn;
import org.pourbook.book.in.Table.HeadedColumn;
import org.pourbook.book.in.Table.TableRow;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.job.SettingText;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.measure.LengthText;
import org.pourbook.measure.TimeText;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;
import org.pourbook.problem.Place;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;

/**
 * The cells of a row as values. What cannot be used is reported once, and the value is empty then;
 * a blank cell is empty too, and reported where it is required.
 */
final class Cells {

  private final TableRow row;
  private final UnitSystem units;
  private final String job;
  private final Effect effect;
  private final List<Problem> problems;
  private boolean sound = true;

  /**
   * Returns the cells of a row.
   *
   * @param units of bare numbers
   * @param effect of a problem in this row
   */
  Cells(TableRow row, UnitSystem units, String job, Effect effect, List<Problem> problems) {
    this.row = row;
    this.units = units;
    this.job = job;
    this.effect = effect;
    this.problems = problems;
    for (HeadedColumn headed : row.table().headed()) {
      headed.column().ifPresent(column -> checkReadable(headed, column));
    }
  }

  /** An error value is a problem wherever it stands; a bad heading was reported already. */
  private void checkReadable(HeadedColumn headed, InputColumn column) {
    GivenCell cell = row.raw().cell(headed.at());
    if (cell instanceof GivenCell.Error) {
      refuse(column.heading(), Expected.in(column, units));
    } else if (row.table().isDistrusted(column) && !(cell instanceof GivenCell.Blank)) {
      sound = false;
    }
  }

  /** Returns whether no problem of this row was reported. */
  boolean isSound() {
    return sound;
  }

  boolean isBlank(String heading) {
    return row.cell(heading) instanceof GivenCell.Blank;
  }

  Place place(String heading) {
    return row.place(heading);
  }

  Place place() {
    return row.place();
  }

  UnitSystem units() {
    return units;
  }

  /** Reports a cell that cannot be used. */
  void refuse(String heading, String expected) {
    sound = false;
    report(heading, expected, effect);
  }

  /** Reports something that a person should look at, though it was used as the words say. */
  void note(String heading, String expected) {
    report(heading, expected, Effect.NOTE);
  }

  private void report(String heading, String expected, Effect what) {
    problems.add(
        new Problem(row.place(heading), job, CellWords.found(row.cell(heading)), expected, what));
  }

  Optional<String> text(String heading) {
    return read(
        heading, cell -> Optional.of(CellWords.of(cell)), column -> Expected.in(column, units));
  }

  String textOrEmpty(String heading) {
    return text(heading).orElse("");
  }

  /** Returns a code or trade size: a date there is one that a spreadsheet made of 1/2 or 3-4. */
  Optional<String> code(String heading) {
    return read(
        heading,
        cell ->
            cell instanceof GivenCell.Date || cell instanceof GivenCell.Time
                ? Optional.empty()
                : Optional.of(CellWords.of(cell)),
        column -> Expected.in(column, units) + ", in a cell formatted as text");
  }

  /** Returns the one of the values whose label the cell holds. */
  <E extends Enum<E>> Optional<E> choice(String heading, E[] values, Function<E, String> label) {
    return read(
        heading,
        cell -> {
          String key = Heading.key(CellWords.of(cell));
          for (E value : values) {
            if (Heading.key(label.apply(value)).equals(key)) {
              return Optional.of(value);
            }
          }
          return Optional.empty();
        },
        column -> Expected.in(column, units));
  }

  Optional<Boolean> yesNo(String heading) {
    return read(
        heading,
        cell ->
            cell instanceof GivenCell.YesNo yesNo
                ? Optional.of(yesNo.yes())
                : Amounts.words(cell).flatMap(SettingText::yesNo),
        column -> Expected.in(column, units));
  }

  Optional<LocalDate> date(String heading) {
    return read(
        heading,
        cell ->
            cell instanceof GivenCell.Date date
                ? Optional.of(date.date())
                : Amounts.words(cell).flatMap(Amounts::isoDate),
        column -> Expected.in(column, units));
  }

  Optional<LocalTime> time(String heading) {
    return read(
        heading,
        cell ->
            cell instanceof GivenCell.Time time
                ? Optional.of(time.time())
                : Amounts.words(cell).flatMap(TimeText::read),
        column -> Expected.in(column, units));
  }

  Optional<BigDecimal> number(String heading) {
    InputColumn column = row.table().column(heading);
    return read(
        heading,
        cell -> Amounts.plainNumber(cell).filter(number -> Amounts.inRange(number, column)),
        this::numberExpected);
  }

  Optional<Integer> count(String heading) {
    InputColumn column = row.table().column(heading);
    return read(
        heading,
        cell ->
            Amounts.plainNumber(cell)
                .filter(number -> Amounts.inRange(number, column) && number.scale() <= 0)
                .map(BigDecimal::intValueExact),
        this::numberExpected);
  }

  /** Returns a percentage, 5 for 5 %. */
  Optional<BigDecimal> percent(String heading) {
    InputColumn column = row.table().column(heading);
    return read(
        heading,
        cell ->
            Amounts.percentNumber(cell)
                .filter(
                    number ->
                        Amounts.inRange(number, column) && number.compareTo(Amounts.HUNDRED) <= 0),
        c -> Expected.in(c, units));
  }

  /** Returns a length in any notation; a bare number is in the column's unit. */
  Optional<Length> length(String heading) {
    InputColumn column = row.table().column(heading);
    return length(heading, bareUnit(column));
  }

  /** Returns a length in any notation, a bare number in that unit. */
  Optional<Length> length(String heading, Unit bare) {
    InputColumn column = row.table().column(heading);
    return read(
        heading,
        cell -> Amounts.length(cell, bare).filter(length -> Amounts.inRange(length, column)),
        c -> lengthExpected(c, bare));
  }

  /** Returns a length, or empty for one of the words; empty within when the cell is blank. */
  Optional<LengthOrWord> lengthOrWord(String heading, String... words) {
    InputColumn column = row.table().column(heading);
    return read(
        heading,
        cell -> {
          Optional<String> word =
              Optional.of(CellWords.of(cell).toLowerCase(Locale.ROOT))
                  .filter(List.of(words)::contains);
          return word.isPresent()
              ? Optional.of(new LengthOrWord(Optional.empty(), word))
              : Amounts.length(cell, bareUnit(column))
                  .filter(length -> Amounts.inRange(length, column))
                  .map(length -> new LengthOrWord(Optional.of(length), Optional.empty()));
        },
        c -> lengthExpected(c, bareUnit(c)));
  }

  /** Returns what would be right, with the bound that the cell's number passes. */
  private String numberExpected(InputColumn column) {
    return Expected.in(column, units)
        + Amounts.plainNumber(row.cell(column))
            .filter(number -> column.kind() != CellKind.CODE && column.kind() != CellKind.TEXT)
            .map(column.bounds()::passedBy)
            .filter(bound -> !bound.isEmpty())
            .map(bound -> ", " + bound)
            .orElse("");
  }

  private String lengthExpected(InputColumn column, Unit bare) {
    return Expected.in(column, units)
        + Amounts.length(row.cell(column), bare)
            .map(length -> column.bounds().passedBy(length, units))
            .filter(bound -> !bound.isEmpty())
            .map(bound -> "; " + bound)
            .orElse("");
  }

  /** What a cell holds that takes a length or a word. */
  record LengthOrWord(Optional<Length> length, Optional<String> word) {}

  /** Returns the unit of a bare number in a column of lengths. */
  Unit bareUnit(InputColumn column) {
    if (column.unit() == ColumnUnit.INCHES) {
      return units.isMetric() ? Unit.MM : Unit.IN;
    }
    return units.isMetric() ? Unit.M : Unit.FT;
  }

  /** Notes a bare number of feet with decimals: 24.6 may have been meant as 24'-6". */
  private void noteDecimalFeet(String heading, Length length) {
    GivenCell cell = row.cell(heading);
    String text = CellWords.of(cell);
    boolean bare = cell instanceof GivenCell.Number || LengthText.isBare(text);
    if (bare && text.indexOf('.') >= 0 && length.nanometres() % Length.FOOT_NM != 0) {
      note(heading, "read as " + LengthFormat.feetInches(length));
    }
  }

  /** Returns a length whose bare decimals are noted where they are feet. */
  Optional<Length> feet(String heading) {
    Optional<Length> length = length(heading);
    if (!units.isMetric()) {
      length.ifPresent(value -> noteDecimalFeet(heading, value));
    }
    return length;
  }

  /** Returns what a reader makes of the words of a cell. */
  <T> Optional<T> parsed(String heading, Function<String, Optional<T>> reader) {
    return read(
        heading,
        cell ->
            cell instanceof GivenCell.Date || cell instanceof GivenCell.Time
                ? Optional.empty()
                : reader.apply(CellWords.of(cell)),
        this::numberExpected);
  }

  OptionalDouble decimal(String heading) {
    return number(heading)
        .map(n -> OptionalDouble.of(n.doubleValue()))
        .orElse(OptionalDouble.empty());
  }

  private <T> Optional<T> read(
      String heading,
      Function<GivenCell, Optional<T>> reader,
      Function<InputColumn, String> expected) {
    InputColumn column = row.table().column(heading);
    GivenCell cell = row.cell(column);
    if (cell instanceof GivenCell.Blank) {
      if (column.required() && !row.table().isDistrusted(column)) {
        refuse(heading, expected.apply(column));
      }
      return Optional.empty();
    }
    if (cell instanceof GivenCell.Error || row.table().isDistrusted(column)) {
      return Optional.empty();
    }
    Optional<T> value = reader.apply(cell);
    if (value.isEmpty()) {
      refuse(heading, expected.apply(column));
    }
    return value;
  }
}
