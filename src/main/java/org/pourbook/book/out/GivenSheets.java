package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.book.InputSheet;
import org.pourbook.job.GivenSheet;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.job.GivenSheet.GivenRow;

/** The input as it was read, from which later commands work. */
final class GivenSheets {

  private static final int LEAST_WIDTH = 8;
  private static final int MOST_WIDTH = 28;

  private GivenSheets() {}

  static List<SheetSpec<GivenRow>> specs(List<GivenSheet> given) {
    return given.stream().map(GivenSheets::spec).toList();
  }

  private static SheetSpec<GivenRow> spec(GivenSheet given) {
    List<Column<GivenRow>> columns = new ArrayList<>();
    for (int i = 0; i < given.headings().size(); i++) {
      int index = i;
      columns.add(
          Column.cell(
              given.headings().get(i),
              Look.GIVEN,
              width(given, i),
              row -> index < row.cells().size() ? cell(row.cells().get(index)) : Cell.BLANK));
    }
    columns.add(Column.text(InputSheet.FROM_SHEET, 12, GivenRow::fromSheet));
    columns.add(Column.count(InputSheet.FROM_ROW, 8, GivenRow::fromRow));
    return SheetSpec.landscape(
        InputSheet.GIVEN + given.name(),
        "The input as it was read; later commands work from it.",
        columns,
        given.rows());
  }

  private static int width(GivenSheet given, int column) {
    int width = LEAST_WIDTH;
    for (GivenRow row : given.rows()) {
      if (column < row.cells().size() && row.cells().get(column) instanceof GivenCell.Text text) {
        width = Math.max(width, text.text().length() + 1);
      }
    }
    return Math.min(width, MOST_WIDTH);
  }

  private static Cell cell(GivenCell given) {
    if (given instanceof GivenCell.Text text) {
      return Cell.of(text.text());
    } else if (given instanceof GivenCell.Number number) {
      return Cell.of(number.number());
    } else if (given instanceof GivenCell.Date date) {
      return new Cell.Day(date.date());
    } else if (given instanceof GivenCell.Time time) {
      return new Cell.Clock(time.time());
    } else if (given instanceof GivenCell.YesNo yesNo) {
      return new Cell.YesNo(yesNo.yes());
    } else if (given instanceof GivenCell.Error error) {
      return Cell.of(error.code());
    }
    return Cell.BLANK;
  }
}
