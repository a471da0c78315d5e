package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.pourbook.problem.Place;

/**
 * A sheet that holds one table: its columns over its records. Every such sheet is laid out alike,
 * so that other sheets' formulas know where a record stands before anything is written.
 *
 * <p>A table that is longer than a sheet goes on in {@code NAME (2)}. Rows are counted as if there
 * were one sheet, until a formula names them.
 *
 * @param says what the sheet is, in one sentence under its name
 * @param landscape how it is printed
 * @param columns those that are printed come first
 * @param parts the sheets that hold it
 * @param light words beside the title that tell whether all is well; blank for none
 * @param below what stands under the table
 */
record SheetSpec<R>(
    String name,
    String says,
    boolean landscape,
    List<Column<R>> columns,
    List<R> rows,
    Parts parts,
    Cell light,
    Below below)
    implements Sheet {

  /** Rows as the spreadsheet counts them, from 1. */
  static final int TITLE_ROW = 1;

  static final int SAYS_ROW = 2;
  static final int TOTAL_ROW = 3;
  static final int HEADING_ROW = 4;
  static final int FIRST_ROW = 5;

  /** One for a row that was not moved. */
  static final String IN_PLACE = "In place";

  /** How many records a sheet holds. */
  static final int MOST_RECORDS = Parts.MOST_ROWS - HEADING_ROW;

  SheetSpec {
    columns =
        Stream.concat(
                columns.stream().filter(Column::printed),
                columns.stream().filter(column -> !column.printed()))
            .toList();
    rows = rows instanceof MadeRows ? rows : List.copyOf(rows);
  }

  static <R> SheetSpec<R> landscape(
      String name, String says, List<Column<R>> columns, List<R> rows) {
    return new SheetSpec<>(
        name,
        says,
        true,
        columns,
        rows,
        parts(rows.size(), MOST_RECORDS),
        Cell.BLANK,
        Below.NOTHING);
  }

  static <R> SheetSpec<R> portrait(
      String name, String says, List<Column<R>> columns, List<R> rows) {
    return new SheetSpec<>(
        name,
        says,
        false,
        columns,
        rows,
        parts(rows.size(), MOST_RECORDS),
        Cell.BLANK,
        Below.NOTHING);
  }

  private static Parts parts(int records, int most) {
    return Parts.of(records, most, index -> true);
  }

  /** Returns the same in sheets of so many records, where it is not divided already. */
  SheetSpec<R> inSheetsOf(int most) {
    return parts.count() > 1
        ? this
        : new SheetSpec<>(
            name, says, landscape, columns, rows, parts(rows.size(), most), light, below);
  }

  /**
   * Returns the same in sheets of so many records, those with the same key on one sheet.
   *
   * @param most records of a sheet
   */
  SheetSpec<R> together(Function<R, ?> keyOf, int most) {
    IntPredicate begins =
        index -> !keyOf.apply(rows.get(index)).equals(keyOf.apply(rows.get(index - 1)));
    return new SheetSpec<>(
        name, says, landscape, columns, rows, Parts.of(rows.size(), most, begins), light, below);
  }

  /**
   * Returns the same with a column that tells of each row whether it still stands where it was
   * written: formulas of other sheets find it by its place.
   */
  SheetSpec<R> withPlaces() {
    List<Column<R>> more = new ArrayList<>(columns);
    more.add(Column.onScreen(Column.<R>of(IN_PLACE, Look.COUNT, 7, SheetSpec::inPlace).inTotal()));
    return new SheetSpec<>(name, says, landscape, more, rows, parts, light, below);
  }

  private static <R> Cell inPlace(At<R> at) {
    SheetSpec<R> spec = at.sheet();
    int place = spec.rowInSheet(at.row()) - HEADING_ROW;
    String heading = spec.letter(IN_PLACE) + "$" + HEADING_ROW;
    return Cell.formula("IF(ROW()-ROW(" + heading + ")=" + place + ",1,0)", 1);
  }

  /** Returns the same with a light beside its title. */
  SheetSpec<R> withLight(Cell words) {
    return new SheetSpec<>(name, says, landscape, columns, rows, parts, words, below);
  }

  /** Returns the same with something under its table. */
  SheetSpec<R> with(Below under) {
    return new SheetSpec<>(name, says, landscape, columns, rows, parts, light, under);
  }

  /** Returns the letters of a column. */
  String letter(String heading) {
    for (int i = 0; i < columns.size(); i++) {
      if (columns.get(i).heading().equals(heading)) {
        return Place.columnName(i);
      }
    }
    throw new IllegalArgumentException("no column " + heading + " in " + name);
  }

  /** Returns the sum of a column's numbers. */
  double total(Column<R> column) {
    double sum = 0;
    for (int i = 0; i < rows.size(); i++) {
      Cell cell = column.value().apply(at(i));
      Cell value = cell instanceof Cell.Formula formula ? formula.stored() : cell;
      sum += value instanceof Cell.Number number ? number.number() : 0;
    }
    return sum;
  }

  /** Returns the sum of the numbers under a heading. */
  double totalOf(String heading) {
    return columns.stream()
        .filter(column -> column.heading().equals(heading))
        .mapToDouble(this::total)
        .sum();
  }

  /** Returns how many columns are printed. */
  int printedColumns() {
    return (int) columns.stream().filter(Column::printed).count();
  }

  /** Returns the width of all that is printed, in characters. */
  int printedWidth() {
    return columns.stream().filter(Column::printed).mapToInt(Column::broadWidth).sum();
  }

  /** Returns the last row of the table, the heading's where it holds no record. */
  int lastRow() {
    return HEADING_ROW + rows.size();
  }

  At<R> at(int index) {
    return new At<>(rows.get(index), FIRST_ROW + index, this);
  }

  /** Returns the name of the sheet that holds a part. */
  String nameOf(int part) {
    return part == 0 ? name : name + " (" + (part + 1) + ")";
  }

  /** Returns the row of its own sheet in which a row of the table stands. */
  int rowInSheet(int row) {
    return FIRST_ROW + parts.within(row - FIRST_ROW);
  }

  /** Returns the last row of a part's sheet. */
  int lastRowOf(int part) {
    return HEADING_ROW + parts.end(part, rows.size()) - parts.starts().get(part);
  }

  /** Returns a cell of the table for other sheets' formulas: {@code Takeoff!$F$10}. */
  String cell(int row, String heading) {
    return Span.cell(nameOf(parts.partOf(row - FIRST_ROW)), letter(heading), rowInSheet(row));
  }

  /**
   * Returns the cells of rows in a column, for other sheets' formulas.
   *
   * @throws IllegalArgumentException if the rows are on two sheets
   */
  String cells(Span rows, String heading) {
    return inSheet(rows).in(nameOf(parts.partOf(rows.first() - FIRST_ROW)), letter(heading));
  }

  /** Returns the cell of a column's total, for other sheets' formulas. */
  String total(String heading) {
    return Span.cell(name, letter(heading), TOTAL_ROW);
  }

  /** Returns where rows of the table stand, for links: {@code Takeoff!A10:J14}. */
  String place(Span rows, int columns) {
    Span there = inSheet(rows);
    return Span.quoted(nameOf(parts.partOf(rows.first() - FIRST_ROW)))
        + "!A"
        + there.first()
        + ":"
        + Place.columnName(columns - 1)
        + there.last();
  }

  /** Returns the first cell of a row, for links: {@code Takeoff!A10}. */
  String firstCell(int row) {
    return Span.quoted(nameOf(parts.partOf(row - FIRST_ROW))) + "!A" + rowInSheet(row);
  }

  boolean isOnOneSheet(Span rows) {
    return parts.partOf(rows.first() - FIRST_ROW) == parts.partOf(rows.last() - FIRST_ROW);
  }

  private Span inSheet(Span rows) {
    if (!isOnOneSheet(rows)) {
      throw new IllegalArgumentException("rows on two sheets: " + rows);
    }
    return new Span(rowInSheet(rows.first()), rowInSheet(rows.last()));
  }

  @Override
  public List<Sheet> sheets() {
    return IntStream.range(0, parts.count())
        .<Sheet>mapToObj(part -> new Part<>(this, part))
        .toList();
  }

  @Override
  public void writeTo(XSSFSheet sheet, Rows rows, Paper paper) {
    new SheetWriter<>(this, 0, sheet, rows, paper).write();
  }

  /** What stands under a table, on its first sheet. */
  @FunctionalInterface
  interface Below {

    Below NOTHING = (sheet, row) -> 0;

    /**
     * Writes it.
     *
     * @param row the first free row under the table, as the spreadsheet counts
     * @return how many rows it takes
     */
    int writeTo(XSSFSheet sheet, int row);
  }

  /** One of the sheets that a table fills. */
  private record Part<R>(SheetSpec<R> spec, int part) implements Sheet {
    @Override
    public String name() {
      return spec.nameOf(part);
    }

    @Override
    public void writeTo(XSSFSheet sheet, Rows rows, Paper paper) {
      new SheetWriter<>(spec, part, sheet, rows, paper).write();
    }
  }
}
