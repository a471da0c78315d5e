package org.pourbook.book.in;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthText;
import org.pourbook.measure.NumberText;
import org.pourbook.measure.Unit;

/** Reads a fall: {@code 1/4} inches a foot, {@code 20} mm a metre, or {@code 2%}. */
final class FallCell {

  private static final Pattern PER =
      Pattern.compile("(.+?)\\s*(?:per|/)\\s*(ft|foot|m|metre|meter)");

  private FallCell() {}

  /** Returns the slope as a ratio; empty when the cell is blank or was refused. */
  static Optional<Double> read(Cells cells) {
    return cells.parsed("Fall", text -> slope(text, cells.units().isMetric()));
  }

  private static Optional<Double> slope(String text, boolean metric) {
    if (text.endsWith("%")) {
      return NumberText.read(text.substring(0, text.length() - 1))
          .map(percent -> percent.doubleValue() / 100)
          .filter(FallCell::sensible);
    }
    Matcher per = PER.matcher(text.toLowerCase(Locale.ROOT));
    boolean said = per.matches();
    boolean aMetre = said ? per.group(2).startsWith("m") : metric;
    Length run = aMetre ? Length.ofMillimetres(1000) : Length.ofFeet(1);
    return LengthText.read(said ? per.group(1) : text, metric ? Unit.MM : Unit.IN)
        .map(rise -> (double) rise.nanometres() / run.nanometres())
        .filter(FallCell::sensible);
  }

  /** A top steeper than 1 in 1 cannot be placed. */
  private static boolean sensible(double ratio) {
    return ratio >= 0 && ratio <= 1;
  }
}
