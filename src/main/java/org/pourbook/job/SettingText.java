package org.pourbook.job;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.pourbook.measure.BoltSize;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthText;
import org.pourbook.measure.NumberText;
import org.pourbook.measure.TimeText;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;

/** Values of settings as the Practice sheet writes them. */
public final class SettingText {

  /** Psi in one MPa. */
  static final double PSI_PER_MPA = 145.03773773020922;

  private static final Set<Setting> MAY_BE_ZERO =
      EnumSet.of(
          Setting.WASTE_ALLOWANCE,
          Setting.WASTE_ALLOWANCE_PIER,
          Setting.PUMP_LOSS,
          Setting.LEAST_LOAD,
          Setting.BAGGED_UP_TO,
          Setting.SPILL,
          Setting.BASE_BANK_SLOPE,
          Setting.BASE,
          Setting.BASE_MARGIN,
          Setting.RETARDER_LAP,
          Setting.EDGE_COVER,
          Setting.TOP_COVER,
          Setting.TOP_COVER_OUTSIDE,
          Setting.SHORTEST_BAR,
          Setting.FORM_GAP,
          Setting.SHORTEST_BOARD,
          Setting.STRIP_AFTER,
          Setting.REUSE_LOSS,
          Setting.BOLT_END_DISTANCE,
          Setting.BOLT_TOLERANCE,
          Setting.SPARE_BOLTS,
          Setting.MINUTES_AWAY,
          Setting.RAIN_LIMIT,
          Setting.NORTH,
          Setting.ALLOWANCE,
          Setting.SPARE_PIECES,
          Setting.SAW_KERF,
          Setting.SAW_KERF_BAR,
          Setting.KEEP_OFFCUTS,
          Setting.COST_OF_ANOTHER_STOP,
          Setting.AHEAD_OF_POUR,
          Setting.QUOTATION_DAYS,
          Setting.QUANTITY_DIFFERENCE,
          Setting.PRICE_DIFFERENCE,
          Setting.DISCHARGE_LIMIT);

  private static final List<String> BASE_MATERIALS = List.of("clean stone", "crusher run", "sand");
  private static final Pattern BAR_DIAMETERS = Pattern.compile("(\\d{1,3}(?:\\.\\d{1,4})?) ?db");

  private SettingText() {}

  /**
   * Returns the value of a setting; empty when the text is none that makes sense.
   *
   * @param bare whose unit a bare number has
   * @param shown the units that the value is shown in
   */
  public static Optional<SettingValue> read(
      Setting setting, String text, UnitSystem bare, UnitSystem shown, String source) {
    String words = text.strip();
    return switch (setting.type()) {
      case TEXT -> word(setting, words, bare).map(said -> SettingValues.ofText(said, source));
      case TIME -> TimeText.read(words).map(time -> SettingValues.ofText(time.toString(), source));
      case YES_NO -> yesNo(words).map(yes -> SettingValues.ofYesNo(yes, source));
      case LENGTH_IN, LENGTH_FT ->
          length(setting, words, bare)
              .map(length -> SettingValues.ofLength(setting, length, shown, source));
      default ->
          number(setting, words, bare)
              .filter(number -> sensible(setting, number))
              .map(number -> SettingValues.ofNumber(setting, number, shown, source));
    };
  }

  /** Returns yes or no of the words that cells use for them; empty for any other. */
  public static Optional<Boolean> yesNo(String text) {
    return switch (text.strip().toLowerCase(Locale.ROOT)) {
      case "yes", "y", "true", "x" -> Optional.of(true);
      case "no", "n", "false" -> Optional.of(false);
      default -> Optional.empty();
    };
  }

  private static Optional<String> word(Setting setting, String text, UnitSystem bare) {
    String lower = text.toLowerCase(Locale.ROOT);
    return switch (setting) {
      case BASE_MATERIAL -> BASE_MATERIALS.stream().filter(lower::equals).findFirst();
      case BOLT -> BoltSize.named(text).map(BoltSize::designation);
      case LAP_RULE -> lapRule(lower, bare);
      default -> text.isEmpty() ? Optional.empty() : Optional.of(text);
    };
  }

  private static Optional<String> lapRule(String text, UnitSystem bare) {
    if (text.equals("class b") || BAR_DIAMETERS.matcher(text).matches()) {
      return Optional.of(text);
    }
    Unit unit = bare.isMetric() ? Unit.MM : Unit.IN;
    return LengthText.read(text, unit)
        .filter(length -> length.isPositive() && SettingBounds.hold(Setting.LAP_RULE, length))
        .map(length -> LengthText.isBare(text) ? text + " " + unit.label() : text);
  }

  private static Optional<Length> length(Setting setting, String text, UnitSystem bare) {
    Unit unit = Unit.named(SettingValues.unit(setting, bare)).orElseThrow();
    return LengthText.read(text, unit)
        .filter(length -> length.isPositive() || (length.isZero() && mayBeZero(setting)))
        .filter(length -> SettingBounds.hold(setting, length));
  }

  private static Optional<BigDecimal> number(Setting setting, String text, UnitSystem bare) {
    String lower = text.toLowerCase(Locale.ROOT);
    String usUnit = setting.type().unit().toLowerCase(Locale.ROOT);
    String metricUnit = setting.type().metricUnit().toLowerCase(Locale.ROOT);
    if (!usUnit.isEmpty() && lower.endsWith(usUnit)) {
      return base(setting, lower.substring(0, lower.length() - usUnit.length()), UnitSystem.FT_IN);
    }
    if (!metricUnit.isEmpty() && lower.endsWith(metricUnit)) {
      return base(setting, lower.substring(0, lower.length() - metricUnit.length()), UnitSystem.M);
    }
    return base(
        setting, setting.type() == Setting.Type.DAYS ? lower.replace("day", "") : lower, bare);
  }

  private static Optional<BigDecimal> base(Setting setting, String text, UnitSystem units) {
    return NumberText.read(text)
        .map(
            number -> number.multiply(SettingValues.factor(setting, units), MathContext.DECIMAL64));
  }

  private static boolean sensible(Setting setting, BigDecimal number) {
    boolean inRange =
        SettingBounds.hold(setting, number)
            && (number.signum() > 0 || (number.signum() == 0 && mayBeZero(setting)));
    return switch (setting.type()) {
      case PERCENT -> inRange && confident(setting, number);
      case DAYS, COUNT -> inRange && number.stripTrailingZeros().scale() <= 0;
      default -> inRange;
    };
  }

  /** A one-sided confidence below a half would order less than was measured; 100 % is infinite. */
  private static boolean confident(Setting setting, BigDecimal percent) {
    return setting != Setting.ORDER_CONFIDENCE
        || (percent.compareTo(BigDecimal.valueOf(50)) >= 0
            && percent.compareTo(BigDecimal.valueOf(100)) < 0);
  }

  private static boolean mayBeZero(Setting setting) {
    return MAY_BE_ZERO.contains(setting);
  }
}
