package org.pourbook.measure;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A reinforcing bar size: its designation ({@code #4}, {@code 10M}, {@code 12 mm}), nominal
 * diameter, area and tabulated mass.
 *
 * @param massKgPerM tabulated mass [kg/m], not π·d²/4 (rule BAR-6)
 */
public record BarSize(String designation, Length diameter, double areaMm2, double massKgPerM) {

  /** Kilograms a metre in one pound a foot. */
  private static final double LB_PER_FT = 0.45359237 / 0.3048;

  /** Square millimetres in a square inch. */
  private static final double IN2 = 645.16;

  /**
   * All sizes known. #3–#11: CRSI Manual of Standard Practice, 27th ed., inside cover, after ASTM
   * A615 (published). 10M–35M: CSA G30.18 (from memory). 8–32 mm: ISO 6935-2 nominal values
   * (computed at 7,850 kg/m3, from memory).
   */
  private static final List<BarSize> ALL =
      List.of(
          inch("#3", "0.375", 0.11, 0.376),
          inch("#4", "0.500", 0.20, 0.668),
          inch("#5", "0.625", 0.31, 1.043),
          inch("#6", "0.750", 0.44, 1.502),
          inch("#7", "0.875", 0.60, 2.044),
          inch("#8", "1.000", 0.79, 2.670),
          inch("#9", "1.128", 1.00, 3.400),
          inch("#10", "1.270", 1.27, 4.303),
          inch("#11", "1.410", 1.56, 5.313),
          metric("10M", "11.3", 100, 0.785),
          metric("15M", "16.0", 200, 1.570),
          metric("20M", "19.5", 300, 2.355),
          metric("25M", "25.2", 500, 3.925),
          metric("30M", "29.9", 700, 5.495),
          metric("35M", "35.7", 1000, 7.850),
          metric("8 mm", "8", 50.3, 0.395),
          metric("10 mm", "10", 78.5, 0.617),
          metric("12 mm", "12", 113.1, 0.888),
          metric("14 mm", "14", 153.9, 1.208),
          metric("16 mm", "16", 201.1, 1.578),
          metric("20 mm", "20", 314.2, 2.466),
          metric("25 mm", "25", 490.9, 3.853),
          metric("28 mm", "28", 615.8, 4.834),
          metric("32 mm", "32", 804.2, 6.313));

  private static BarSize inch(String name, String inches, double in2, double lbPerFt) {
    return new BarSize(
        name, Length.ofInches(new BigDecimal(inches)), in2 * IN2, lbPerFt * LB_PER_FT);
  }

  private static BarSize metric(String name, String mm, double mm2, double kgPerM) {
    return new BarSize(name, Length.ofMillimetres(new BigDecimal(mm)), mm2, kgPerM);
  }

  /** Returns the size of that designation, ignoring case and spaces ({@code #4}, {@code 12mm}). */
  public static Optional<BarSize> named(String designation) {
    String key = key(designation);
    return ALL.stream().filter(size -> key(size.designation).equals(key)).findFirst();
  }

  public static List<BarSize> all() {
    return ALL;
  }

  private static String key(String text) {
    return text.replace(" ", "").toLowerCase(Locale.ROOT);
  }

  /** Returns whether the bar is #6 (19 mm) or smaller, where ACI's simplified length applies. */
  public boolean isSmall() {
    return diameter.compareTo(Length.ofMillimetres(20)) <= 0;
  }

  /** Returns whether the size is an inch-pound one ({@code #4}), not a metric one. */
  public boolean isInchPound() {
    return designation.startsWith("#");
  }

  @Override
  public String toString() {
    return designation;
  }
}
