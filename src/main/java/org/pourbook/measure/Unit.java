package org.pourbook.measure;

import java.util.Locale;
import java.util.Optional;

/**
 * A unit of amounts, with its exact factor to the base unit of its {@link Dimension}.
 *
 * <p>Factors follow the international yard and pound of 1959 (1 yd = 0.9144 m, 1 lb = 0.45359237
 * kg) and the US gallon of 231 in3.
 */
public enum Unit {
  FT("ft", Dimension.LENGTH, 0.3048),
  IN("in", Dimension.LENGTH, 0.0254),
  M("m", Dimension.LENGTH, 1),
  MM("mm", Dimension.LENGTH, 0.001),
  FT2("ft2", Dimension.AREA, 0.09290304),
  M2("m2", Dimension.AREA, 1),
  YD3("yd3", Dimension.VOLUME, 0.764554857984),
  FT3("ft3", Dimension.VOLUME, 0.028316846592),
  M3("m3", Dimension.VOLUME, 1),
  GAL("gal", Dimension.VOLUME, 0.003785411784),
  L("L", Dimension.VOLUME, 0.001),
  LB("lb", Dimension.MASS, 0.45359237),
  CWT("cwt", Dimension.MASS, 45.359237),
  TON("ton", Dimension.MASS, 907.18474),
  KG("kg", Dimension.MASS, 1),
  T("t", Dimension.MASS, 1000),
  EACH("each", Dimension.COUNT, 1),
  HOUR("hour", Dimension.TIME, 1);

  private final String label;
  private final Dimension dimension;
  private final double factor;

  Unit(String label, Dimension dimension, double factor) {
    this.label = label;
    this.dimension = dimension;
    this.factor = factor;
  }

  /** Returns the unit's word in workbooks, e.g. {@code yd3}. */
  public String label() {
    return label;
  }

  public Dimension dimension() {
    return dimension;
  }

  /** Returns an amount of this unit in the dimension's base unit. */
  public double toBase(double amount) {
    return amount * factor;
  }

  /** Returns an amount in the dimension's base unit as an amount of this unit. */
  public double fromBase(double base) {
    return base / factor;
  }

  /** Returns the unit of that word, ignoring case ({@code yd3}, {@code cy}, {@code lf} …). */
  public static Optional<Unit> named(String word) {
    String key = word.strip().toLowerCase(Locale.ROOT).replace("³", "3").replace("²", "2");
    Optional<Unit> alias =
        switch (key) {
          case "cy", "cyd", "cu yd", "yard", "yards", "yds" -> Optional.of(YD3);
          case "sf", "sq ft" -> Optional.of(FT2);
          case "lf", "foot", "feet" -> Optional.of(FT);
          case "pound", "lbs" -> Optional.of(LB);
          case "ea", "piece", "pieces", "pc", "pcs" -> Optional.of(EACH);
          case "hr", "h" -> Optional.of(HOUR);
          case "gallon", "gallons" -> Optional.of(GAL);
          case "litre", "liter" -> Optional.of(L);
          case "tonne", "tonnes" -> Optional.of(T);
          default -> Optional.empty();
        };
    if (alias.isPresent()) {
      return alias;
    }
    for (Unit unit : values()) {
      if (unit.label.toLowerCase(Locale.ROOT).equals(key)) {
        return Optional.of(unit);
      }
    }
    return Optional.empty();
  }
}
