package org.pourbook.takeoff;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pourbook.measure.Length;

/**
 * A style of welded wire mesh: {@code 6x6-W1.4xW1.4} in inches, {@code 152x152-MW9.1xMW9.1} in
 * millimetres.
 *
 * @param alongSpace between the wires that run along a sheet
 * @param acrossSpace between the cross wires
 * @param wires both diameters together
 */
record MeshStyle(Length alongSpace, Length acrossSpace, Length wires) {

  private static final String NUMBER = "(\\d+(?:\\.\\d+)?)";
  private static final Pattern STYLE =
      Pattern.compile(NUMBER + "[x×]" + NUMBER + "-?(m?)[wd]" + NUMBER + "[x×]m?[wd]" + NUMBER);
  private static final double MM2_PER_HUNDREDTH_IN2 = 6.4516;

  /** Returns the style of that name; empty when it cannot be read. */
  static Optional<MeshStyle> named(String style) {
    Matcher m = STYLE.matcher(style.toLowerCase(Locale.ROOT).replaceAll("[\\s\"]", ""));
    if (!m.matches()) {
      return Optional.empty();
    }
    boolean metric = !m.group(3).isEmpty();
    double unit = metric ? 1 : MM2_PER_HUNDREDTH_IN2;
    Length wires = diameter(m.group(4), unit).plus(diameter(m.group(5), unit));
    return Optional.of(new MeshStyle(space(m.group(1), metric), space(m.group(2), metric), wires))
        .filter(s -> s.alongSpace.isPositive() && s.acrossSpace.isPositive());
  }

  private static Length space(String number, boolean metric) {
    BigDecimal value = new BigDecimal(number);
    return metric ? Length.ofMillimetres(value) : Length.ofInches(value);
  }

  /** W1.4 has a section of 0.014 in2, MW9.1 of 9.1 mm2. */
  private static Length diameter(String number, double unitMm2) {
    double areaM2 = Double.parseDouble(number) * unitMm2 / 1e6;
    return Length.ofMetres(Math.sqrt(4 * areaM2 / StrictMath.PI));
  }

  /** Returns the most usual mesh, 6 in square of W1.4 wire, where a style cannot be read. */
  static MeshStyle usual() {
    return named("6x6-W1.4xW1.4").orElseThrow();
  }
}
