package org.pourbook.job;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.pourbook.measure.Length;

/**
 * The settings in force for one job.
 *
 * @param values every {@link Setting} but the two below, in their order
 * @param allowances the Allowance of a material (percent), where written
 * @param aheadOfPour working days ahead of the pour of a material, or of {@link #GOODS}, where
 *     written
 */
public record Practice(
    Map<Setting, SettingValue> values,
    Map<String, SettingValue> allowances,
    Map<String, SettingValue> aheadOfPour) {

  /** All that is brought but concrete, where a setting has a value for each material. */
  public static final String GOODS = "goods";

  public Practice {
    values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    allowances = Collections.unmodifiableMap(new LinkedHashMap<>(allowances));
    aheadOfPour = Collections.unmodifiableMap(new LinkedHashMap<>(aheadOfPour));
  }

  public SettingValue value(Setting setting) {
    SettingValue value = values.get(setting);
    if (value == null) {
      throw new IllegalArgumentException("no value of " + setting);
    }
    return value;
  }

  /** Returns the number held, see {@link SettingValue#number}. */
  public double number(Setting setting) {
    return value(setting).number();
  }

  /** Returns whether a yes/no setting is yes. */
  public boolean isYes(Setting setting) {
    return value(setting).number() == 1;
  }

  public Length length(Setting setting) {
    return value(setting)
        .length()
        .orElseThrow(() -> new IllegalArgumentException(setting + " is not a length"));
  }

  public String text(Setting setting) {
    return value(setting).shown();
  }

  /** Returns the written allowance of a material in percent, if any. */
  public Optional<Double> allowancePercent(String material) {
    return Optional.ofNullable(allowances.get(material)).map(SettingValue::number);
  }

  /** Returns the written days ahead of the pour of a material, if any. */
  public Optional<Integer> aheadOfPourDays(String material) {
    return Optional.ofNullable(aheadOfPour.get(material)).map(value -> (int) value.number());
  }

  /** Returns the written days ahead of the pour of goods: the material's own, else all goods'. */
  public Optional<Integer> goodsAheadOfPourDays(String material) {
    return aheadOfPourDays(material).or(() -> aheadOfPourDays(GOODS));
  }
}
