package org.pourbook.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;
import org.pourbook.outline.Figures;

/** Figures as they stand in workings, in the units of a job. */
record Working(UnitSystem units) {

  /** Returns feet and inches, or millimetres. */
  String length(Length length) {
    return LengthFormat.of(length, units);
  }

  /** Returns a thickness, in inches or millimetres. */
  String small(Length length) {
    return LengthFormat.small(length, units);
  }

  /** Returns a computed length with its unit, e.g. {@code 120.00 ft}. */
  String run(double metres) {
    return amount(metres, lengthUnit());
  }

  String area(double m2) {
    return amount(m2, areaUnit());
  }

  String volume(double m3) {
    return amount(m3, volumeUnit());
  }

  /** Returns an amount of a base unit in {@code unit}, with its word. */
  String amount(double base, Unit unit) {
    return number(unit.fromBase(base)) + " " + unit.label();
  }

  Unit lengthUnit() {
    return units.isMetric() ? Unit.M : Unit.FT;
  }

  Unit areaUnit() {
    return units.isMetric() ? Unit.M2 : Unit.FT2;
  }

  Unit volumeUnit() {
    return units.isMetric() ? Unit.M3 : Unit.YD3;
  }

  /** Returns {@code × 3}, or nothing for one. */
  String times(int count) {
    return count == 1 ? "" : " × " + count;
  }

  /** Returns a plan size as it is multiplied: {@code 36'-0" × 24'-0"}, or an area. */
  String plan(Section section) {
    if (section.shape() instanceof Shape.Rectangle rectangle) {
      return length(rectangle.length()) + " × " + length(rectangle.width());
    }
    if (section.shape() instanceof Shape.Round round) {
      return "π/4 × (" + length(round.diameter()) + ")²";
    }
    return area(Figures.of(section).areaM2());
  }

  /** Returns a number with two decimals, with four below one, with none where it is whole. */
  static String number(double number) {
    BigDecimal exact = BigDecimal.valueOf(number);
    int decimals = Math.abs(number) < 1 ? 4 : 2;
    BigDecimal rounded = exact.setScale(decimals, RoundingMode.HALF_UP);
    return rounded.compareTo(rounded.setScale(0, RoundingMode.DOWN)) == 0
        ? rounded.setScale(0, RoundingMode.DOWN).toPlainString()
        : rounded.toPlainString();
  }
}
