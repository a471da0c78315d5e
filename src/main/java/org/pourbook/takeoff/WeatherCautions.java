package org.pourbook.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.pourbook.job.Job;
import org.pourbook.job.Pour;
import org.pourbook.job.Setting;
import org.pourbook.job.Weather;
import org.pourbook.takeoff.rule.PourWeather;

/** Cautions that the forecast of a pour gives (POUR-4, POUR-5). */
final class WeatherCautions {

  private final Job job;
  private final Part part = new Part();

  private WeatherCautions(Job job) {
    this.job = job;
  }

  /** Returns the cautions of all pours. */
  static Part of(Job job) {
    WeatherCautions cautions = new WeatherCautions(job);
    for (Pour pour : job.pours()) {
      cautions.drying(pour);
      cautions.temperature(pour);
    }
    return cautions.part;
  }

  private void drying(Pour pour) {
    Weather weather = pour.weather();
    if (weather.airF().isEmpty()
        || weather.humidityPercent().isEmpty()
        || weather.windMph().isEmpty()
        || weather.concreteF().isEmpty()) {
      return;
    }
    double rate =
        PourWeather.evaporation(
            weather.concreteF().getAsDouble(),
            weather.airF().getAsDouble(),
            weather.humidityPercent().getAsDouble(),
            weather.windMph().getAsDouble());
    boolean fiber =
        job.sections().stream()
            .anyMatch(s -> s.pour() == pour.number() && s.fiberKgPerM3().isPresent());
    double limit = PourWeather.evaporationLimit(fiber);
    if (rate >= limit) {
      caution(
          pour,
          "about "
              + BigDecimal.valueOf(rate).setScale(2, RoundingMode.HALF_UP)
              + " lb/ft2/h of water evaporates, precautions from "
              + limit
              + (fiber ? " with fiber" : "")
              + ": windbreak, fog, evaporation retarder, early curing. The formula is a guide"
              + " within 40 %.",
          "POUR-4, ACI 305R");
    }
  }

  private void temperature(Pour pour) {
    Weather weather = pour.weather();
    if (weather.airF().isPresent() && PourWeather.isCold(weather.airF().getAsDouble())) {
      caution(
          pour,
          "air of "
              + degrees(weather.airF().getAsDouble())
              + ", under 40 °F: no frozen ground, blankets for the days of protection",
          "POUR-5, ACI 306R");
    }
    if (weather.concreteF().isPresent() && PourWeather.isHot(weather.concreteF().getAsDouble())) {
      caution(
          pour,
          "concrete of " + degrees(weather.concreteF().getAsDouble()) + ", over 95 °F at discharge",
          "POUR-5, ACI 301");
    }
    double limit = job.practice().number(Setting.RAIN_LIMIT);
    if (weather.rainPercent().isPresent()
        && PourWeather.isRainy(weather.rainPercent().getAsDouble(), limit)) {
      caution(
          pour,
          "rain chance "
              + Working.number(weather.rainPercent().getAsDouble())
              + " %, limit "
              + Working.number(limit)
              + " %: sheeting at hand, or another day",
          "POUR-5");
    }
  }

  private String degrees(double fahrenheit) {
    double shown = job.units().isMetric() ? (fahrenheit - 32) / 1.8 : fahrenheit;
    return Working.number(shown) + (job.units().isMetric() ? " °C" : " °F");
  }

  private void caution(Pour pour, String says, String rule) {
    part.add(new Caution("", "Pour " + pour.number() + ": " + says, rule));
  }
}
