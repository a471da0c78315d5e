package org.pourbook.job;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.pourbook.measure.Length;
import org.pourbook.measure.NumberText;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;

/** Makes the values of settings, shown in a job's units. */
public final class SettingValues {

  private static final BigDecimal M3_PER_YD3 = BigDecimal.valueOf(Unit.YD3.toBase(1));
  private static final BigDecimal PSI_PER_MPA = BigDecimal.valueOf(SettingText.PSI_PER_MPA);

  /** Decimals of a converted default: enough to see, not to compute with. */
  private static final int SHOWN_DECIMALS = 4;

  private SettingValues() {}

  /** Returns every setting at its default, in the units of a job. */
  public static Map<Setting, SettingValue> usual(UnitSystem shown) {
    Map<Setting, SettingValue> values = new LinkedHashMap<>();
    for (Setting setting : Setting.values()) {
      if (setting != Setting.ALLOWANCE && setting != Setting.AHEAD_OF_POUR) {
        values.put(setting, usual(setting, shown));
      }
    }
    return values;
  }

  private static SettingValue usual(Setting setting, UnitSystem shown) {
    String source = "default (" + setting.rule() + ", " + setting.standing().label() + ")";
    if (setting.usual().isEmpty()) {
      return new SettingValue("", unit(setting, shown), Double.NaN, Optional.empty(), source);
    }
    return SettingText.read(setting, setting.usual(), UnitSystem.FT_IN, shown, source)
        .orElseThrow(() -> new IllegalStateException("default of " + setting.label()));
  }

  static SettingValue ofText(String text, String source) {
    return new SettingValue(text, "", Double.NaN, Optional.empty(), source);
  }

  static SettingValue ofYesNo(boolean yes, String source) {
    return new SettingValue(yes ? "yes" : "no", "", yes ? 1 : 0, Optional.empty(), source);
  }

  static SettingValue ofLength(Setting setting, Length length, UnitSystem shown, String source) {
    String unit = unit(setting, shown);
    BigDecimal inUnit =
        switch (unit) {
          case "ft" -> ratio(length, Length.FOOT_NM);
          case "in" -> ratio(length, Length.INCH_NM);
          case "m" -> ratio(length, 1000 * Length.MM_NM);
          default -> ratio(length, Length.MM_NM);
        };
    return new SettingValue(shown(inUnit), unit, Double.NaN, Optional.of(length), source);
  }

  private static BigDecimal ratio(Length length, long unitNm) {
    return BigDecimal.valueOf(length.nanometres())
        .divide(BigDecimal.valueOf(unitNm), MathContext.DECIMAL64);
  }

  static SettingValue ofNumber(Setting setting, BigDecimal base, UnitSystem shown, String source) {
    BigDecimal inUnit = base.divide(factor(setting, shown), MathContext.DECIMAL64);
    return new SettingValue(
        shown(inUnit), unit(setting, shown), base.doubleValue(), Optional.empty(), source);
  }

  private static String shown(BigDecimal number) {
    return NumberText.text(number.setScale(SHOWN_DECIMALS, RoundingMode.HALF_UP));
  }

  /** Returns the unit of a bare number of a setting. */
  static String unit(Setting setting, UnitSystem units) {
    return units.isMetric() ? setting.type().metricUnit() : setting.type().unit();
  }

  /** Returns how many of the unit that values are held in make one of the shown unit. */
  static BigDecimal factor(Setting setting, UnitSystem units) {
    return switch (setting.type()) {
      case VOLUME, RATE -> units.isMetric() ? BigDecimal.ONE : M3_PER_YD3;
      case STRENGTH -> units.isMetric() ? PSI_PER_MPA : BigDecimal.ONE;
      default -> BigDecimal.ONE;
    };
  }
}
