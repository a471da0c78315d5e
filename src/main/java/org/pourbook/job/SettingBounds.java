package org.pourbook.job;

import java.math.BigDecimal;
import java.util.EnumSet;
import java.util.Set;
import org.pourbook.measure.Greatest;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.measure.NumberText;
import org.pourbook.measure.UnitSystem;

/** How small and how great the value of a setting may be; whether it may be zero is apart. */
public final class SettingBounds {

  /** Set or cut shorter, a job would have millions of them. */
  private static final Set<Setting> SPACINGS =
      EnumSet.of(
          Setting.SUPPORT_SPACING,
          Setting.SUPPORT_SPACING_MESH,
          Setting.STAKE_SPACING,
          Setting.STAKE_SPACING_HIGH,
          Setting.STAKE_LENGTH,
          Setting.BRACE_LENGTH,
          Setting.SPLICE_LENGTH,
          Setting.TIE_LENGTH,
          Setting.PLATE_PIECE,
          Setting.STRIP_WIDTH);

  private static final Set<Setting> OF_A_SAW =
      EnumSet.of(Setting.SAW_KERF, Setting.SAW_KERF_BAR, Setting.CUT_STEP);

  private static final Length INCH = Length.ofInches(1);

  /** A wider one would leave nothing of a roll. */
  private static final Length MOST_LAP = Length.ofFeet(5);

  private static final Length FOOT = Length.ofFeet(1);
  private static final Length ANY = new Length(1);

  private SettingBounds() {}

  /**
   * Returns whether a length is within; no saw takes more than an inch, and no crew cuts coarser.
   */
  static boolean hold(Setting setting, Length length) {
    return length.isZero()
        || (!length.isMoreThan(most(setting)) && !length.isLessThan(least(setting)));
  }

  private static Length most(Setting setting) {
    if (OF_A_SAW.contains(setting)) {
      return INCH;
    }
    if (setting == Setting.RETARDER_LAP) {
      return MOST_LAP;
    }
    return setting.type() == Setting.Type.LENGTH_FT ? Greatest.LENGTH : Greatest.DEPTH;
  }

  private static Length least(Setting setting) {
    if (setting == Setting.CUT_STEP) {
      return Length.ofInches(1, 64);
    }
    return SPACINGS.contains(setting) ? INCH : ANY;
  }

  /** Returns whether a number is within, in the unit that values are held in. */
  static boolean hold(Setting setting, BigDecimal number) {
    BigDecimal factor = SettingValues.factor(setting, UnitSystem.FT_IN);
    return number.signum() == 0
        || (number.compareTo(mostNumber(setting).multiply(factor)) <= 0
            && number.compareTo(leastNumber(setting).multiply(factor)) >= 0);
  }

  private static BigDecimal mostNumber(Setting setting) {
    return switch (setting.type()) {
      case MONEY -> Greatest.MONEY;
      case DAYS -> Greatest.DAYS;
      case COUNT -> Greatest.COUNT;
      case PERCENT -> BigDecimal.valueOf(100);
      case DEGREES -> BigDecimal.valueOf(360);
      case RATIO -> BigDecimal.valueOf(1_000);
      case MINUTES -> BigDecimal.valueOf(10_000);
      case STRENGTH -> BigDecimal.valueOf(100_000);
      default -> Greatest.COUNT;
    };
  }

  private static BigDecimal leastNumber(Setting setting) {
    return switch (setting) {
      case ORDER_STEP -> new BigDecimal("0.01");
      case LOAD_SIZE -> new BigDecimal("0.1");
      case STRENGTH_PSI -> BigDecimal.valueOf(100);
      case PLACING_RATE_CHUTE, PLACING_RATE_PUMP, PLACING_RATE_BARROW -> new BigDecimal("0.1");
      default -> BigDecimal.ZERO;
    };
  }

  /** Returns the bounds in words, empty where a setting is no amount: {@code at most 1'-0"}. */
  public static String words(Setting setting, UnitSystem units) {
    return switch (setting.type()) {
      case TEXT, TIME, YES_NO, DEGREES -> "";
      case LENGTH_IN, LENGTH_FT -> {
        Length least = least(setting);
        yield (least.equals(ANY) ? "" : at("least", least, units) + ", ")
            + at("most", most(setting), units);
      }
      default -> {
        BigDecimal least = leastNumber(setting);
        String unit = setting.type().unit();
        yield (least.signum() > 0 ? "at least " + NumberText.text(least) + " and " : "")
            + "at most "
            + NumberText.text(mostNumber(setting))
            + (setting.type().metricUnit().equals(unit) ? "" : " " + unit);
      }
    };
  }

  private static String at(String bound, Length length, UnitSystem units) {
    return "at "
        + bound
        + " "
        + (length.isLessThan(FOOT)
            ? LengthFormat.small(length, units)
            : LengthFormat.of(length, units));
  }
}
