package org.pourbook.job;

import java.util.OptionalDouble;

/** Forecast for a pour in US units; empty where not written. */
public record Weather(
    OptionalDouble airF,
    OptionalDouble humidityPercent,
    OptionalDouble windMph,
    OptionalDouble concreteF,
    OptionalDouble rainPercent) {
  public static final Weather UNKNOWN =
      new Weather(
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty());
}
