package org.pourbook.takeoff.rule;

import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** What the forecast says about a pour (POUR-4, POUR-5). */
public final class PourWeather {

  private static final double LIMIT = 0.2;
  private static final double LIMIT_WITH_FIBER = 0.1;
  private static final double COLD_F = 40;
  private static final double HOT_F = 95;

  private PourWeather() {}

  /**
   * Returns the rate at which water evaporates from fresh concrete, never below 0 [lb/ft2/h]; an
   * estimate within about 40 %.
   *
   * @param humidity relative, 0 to 100 [%]
   */
  @Source(
      rule = "POUR-4",
      says = "E = (Tc^2.5 − r Ta^2.5)(1 + 0.4 V) 10⁻⁶ lb/ft2/h; °F, r = humidity/100, mph",
      key = "aci-305r",
      at = "Menzel's formula in Uno's form",
      standing = Standing.PUBLISHED)
  public static double evaporation(double concreteF, double airF, double humidity, double windMph) {
    double drive = power(concreteF) - humidity / 100 * power(airF);
    return Math.max(0, drive * (1 + 0.4 * windMph) * 1e-6);
  }

  /** Below 0 °F, where nothing is placed, the formula has no meaning. */
  private static double power(double degreesF) {
    return StrictMath.pow(Math.max(0, degreesF), 2.5);
  }

  /** Returns the rate from which precautions are taken [lb/ft2/h]. */
  @Source(
      rule = "POUR-4",
      says = "Precautions against drying from 0.2 lb/ft2/h, from 0.1 where little water bleeds",
      value = "0.2; with fiber 0.1 lb/ft2/h",
      key = "aci-305r",
      standing = Standing.PUBLISHED)
  public static double evaporationLimit(boolean fiber) {
    return fiber ? LIMIT_WITH_FIBER : LIMIT;
  }

  /** Returns whether air is cold enough to protect the concrete from frost. */
  @Source(
      rule = "POUR-5",
      says = "Cold weather: air below 40 °F in the days of protection",
      value = "40 °F",
      key = "aci-306r",
      standing = Standing.PUBLISHED)
  public static boolean isCold(double airF) {
    return airF < COLD_F;
  }

  /** Returns whether concrete is too hot when it is placed. */
  @Source(
      rule = "POUR-5",
      says = "Concrete is no hotter than 95 °F when it is discharged",
      value = "95 °F",
      key = "aci-301",
      at = "301-20; 305.1-14",
      standing = Standing.PUBLISHED)
  public static boolean isHot(double concreteF) {
    return concreteF > HOT_F;
  }

  /** Returns whether rain is too likely. */
  @Source(
      rule = "POUR-5",
      says = "Sheeting is kept ready from a rain chance of the Rain limit",
      value = "40 %",
      standing = Standing.COMMON_PRACTICE)
  public static boolean isRainy(double chancePercent, double limitPercent) {
    return chancePercent >= limitPercent;
  }
}
