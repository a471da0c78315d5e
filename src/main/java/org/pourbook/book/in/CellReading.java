package org.pourbook.book.in;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import org.pourbook.book.ColumnUnit;
import org.pourbook.book.Heading;
import org.pourbook.book.InputColumn;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.job.SettingText;
import org.pourbook.measure.TimeText;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;
import org.pourbook.takeoff.MaterialKey;

/** What a cell means, so that two ways to write one thing compare alike. */
final class CellReading {

  private CellReading() {}

  /** Returns a text that is the same for cells which are read alike; a blank reads its default. */
  static String of(GivenCell cell, InputColumn column, UnitSystem units) {
    GivenCell meant =
        cell instanceof GivenCell.Blank && !column.usual().isEmpty()
            ? new GivenCell.Text(column.usual())
            : cell;
    String words = CellWords.of(meant);
    Optional<String> read =
        switch (column.kind()) {
          case LENGTH, LENGTH_OR_WORD ->
              Amounts.length(meant, bare(column, units))
                  .map(length -> Long.toString(length.nanometres()));
          case NUMBER, COUNT, MONEY -> Amounts.plainNumber(meant).map(CellReading::plain);
          case PERCENT -> Amounts.percentNumber(meant).map(CellReading::plain);
          case YES_NO -> yesNo(meant);
          case CHOICE -> Optional.of(Heading.key(words));
          case TEXT, CODE -> Optional.of(words);
          case DATE -> Amounts.isoDate(words).map(Object::toString);
          case TIME -> TimeText.read(words).map(Object::toString);
          case SIZE, BARS, BAR_RUN, SIDES -> Optional.empty();
        };
    return read.orElseGet(() -> MaterialKey.normal(words));
  }

  private static String plain(BigDecimal number) {
    return number.stripTrailingZeros().toPlainString();
  }

  private static Optional<String> yesNo(GivenCell cell) {
    Optional<Boolean> yes =
        cell instanceof GivenCell.YesNo yesNo
            ? Optional.of(yesNo.yes())
            : SettingText.yesNo(CellWords.of(cell).toLowerCase(Locale.ROOT));
    return yes.map(Object::toString);
  }

  private static Unit bare(InputColumn column, UnitSystem units) {
    if (column.unit() == ColumnUnit.INCHES) {
      return units.isMetric() ? Unit.MM : Unit.IN;
    }
    return units.isMetric() ? Unit.M : Unit.FT;
  }
}
