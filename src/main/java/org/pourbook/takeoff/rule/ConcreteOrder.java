package org.pourbook.takeoff.rule;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import org.pourbook.measure.Unit;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.Source;

/** From net concrete to what is ordered (CON-6, CON-7, CON-9, CON-11). */
public final class ConcreteOrder {

  /** A job of this much net concrete or less has the full allowance (EN5466). */
  private static final double SMALL_JOB_YD3 = 200;

  private static final double SMALL_JOB_PERCENT = 10;
  private static final double LARGE_JOB_PERCENT = 5;

  /** Yield of a bag of dry mix by its weight [ft3]; the bag itself states it. */
  private static final Map<String, Double> BAG_FT3 =
      Map.of("80lb", 0.60, "60lb", 0.45, "40lb", 0.30);

  /** The bag that CON-9 counts in. */
  private static final String USUAL_BAG = "80 lb";

  /** Volumes that differ by less are one volume [m3]: far below what anyone can measure. */
  private static final double SAME_M3 = 1e-9;

  private ConcreteOrder() {}

  /**
   * Returns the allowance of a job by its net concrete, in percent, without a step at 200 yd3.
   *
   * @param netM3 net concrete of the whole job [m3]
   */
  @Source(
      rule = "CON-6",
      says = "A job of 200 yd3 net or less is ordered with 10 % for waste",
      value = "10 % to 200 yd3",
      key = "en5466",
      at = "p. 2-45, step 2",
      standing = Standing.PUBLISHED)
  @Source(
      rule = "CON-6",
      says = "Above 200 yd3 the allowance falls as 2000 ÷ net yd3, to 5 %",
      value = "max(5, 2000 ÷ net yd3) %",
      key = "fm-5-428",
      at = "the other half of the same rule",
      standing = Standing.FROM_MEMORY)
  @Source(
      rule = "CON-6",
      says = "An augered pier is ordered with 20 % (Waste allowance, pier)",
      value = "20 %",
      standing = Standing.COMMON_PRACTICE)
  public static double wastePercent(double netM3) {
    double net = Unit.YD3.fromBase(netM3);
    return net <= SMALL_JOB_YD3
        ? SMALL_JOB_PERCENT
        : Math.max(LARGE_JOB_PERCENT, SMALL_JOB_YD3 * SMALL_JOB_PERCENT / net);
  }

  /**
   * Returns a volume rounded up to whole order steps: the quotient is rounded to nine decimals
   * first, so that 13.75 yd3 at 0.25 yd3 is 55 steps in whatever unit it was computed [m3].
   */
  @Source(
      rule = "CON-7",
      says =
          "Per job, pour and mix: net with each section's allowance, and once a pour the pump loss,"
              + " rounded up to the supplier's order step",
      value = "step 0.25 yd3, pump loss 0.5 yd3",
      standing = Standing.FROM_MEMORY)
  public static double orderedM3(double allowedM3, double stepM3) {
    return steps(allowedM3, stepM3) * stepM3;
  }

  private static double steps(double amount, double step) {
    return BigDecimal.valueOf(amount / step)
        .setScale(9, RoundingMode.HALF_UP)
        .setScale(0, RoundingMode.CEILING)
        .doubleValue();
  }

  /**
   * Returns whether a pour is small enough to be mixed from bags.
   *
   * @param allowedM3 concrete of the pour with its allowance [m3]
   */
  @Source(
      rule = "CON-9",
      says = "A pour of little concrete is mixed from bags (Bagged up to)",
      value = "0.5 yd3",
      standing = Standing.COMMON_PRACTICE)
  public static boolean isBagged(double allowedM3, double limitM3) {
    return allowedM3 <= limitM3 + SAME_M3;
  }

  /** Returns how many 80 lb bags a volume takes. */
  @Source(
      rule = "CON-9",
      says = "Bags are the volume ÷ the yield of a bag, rounded up",
      value = "80 lb gives 0.60 ft3",
      standing = Standing.COMMON_PRACTICE)
  public static int bags(double allowedM3) {
    return (int) steps(allowedM3, bagM3(USUAL_BAG));
  }

  /** Returns the yield of a bag of a size; of an 80 lb bag where the size is another [m3]. */
  @Source(
      rule = "CON-9",
      says = "A bag yields by its weight",
      value = "80 lb 0.60, 60 lb 0.45, 40 lb 0.30 ft3",
      standing = Standing.COMMON_PRACTICE)
  public static double bagM3(String size) {
    double usual = BAG_FT3.getOrDefault(MaterialKey.normal(USUAL_BAG), 0.0);
    return Unit.FT3.toBase(BAG_FT3.getOrDefault(MaterialKey.normal(size), usual));
  }

  /** Returns the fiber for an ordered volume [kg]. */
  @Source(
      rule = "CON-11",
      says = "Fiber is its dose × the ordered volume, bought in whole bags",
      standing = Standing.COMMON_PRACTICE)
  public static double fiberKg(double doseKgPerM3, double orderedM3) {
    return doseKgPerM3 * orderedM3;
  }
}
