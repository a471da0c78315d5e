package org.pourbook.takeoff.rule;

import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** Ordering by depths that were measured on the prepared base (CON-10). */
public final class DepthOrder {

  private static final int FEWEST = 5;

  /** What a point may be thinner than the thickness (ACI 117-10 § 4.5.4). */
  public static final Length THIN_POINT = Length.ofInches(3, 4);

  /** What the mean may be thinner than the thickness (ACI 117-10 § 4.5.4). */
  public static final Length THIN_MEAN = Length.ofInches(3, 8);

  /** No t is asked for beyond it: one degree of freedom at 99.99 % is 3,183. */
  private static final double LARGEST_T = 1e6;

  /** Halvings that bring the largest t below a double's rounding. */
  private static final int HALVINGS = 100;

  private DepthOrder() {}

  /** Returns whether so many depth checks of a section rule its order. */
  @Source(
      rule = "CON-10",
      says = "At least five depth checks in a section set its net in place of the thickness",
      value = "5",
      standing = Standing.COMMON_PRACTICE)
  public static boolean areEnough(int checks) {
    return checks >= FEWEST;
  }

  /** Returns the order of a measured volume, with what its mean may be short of [m3]. */
  @Source(
      rule = "CON-10",
      says =
          "Order = (measured volume + t × standard error of the mean depth × area) × (1 + Spill)",
      value = "Spill 3 %",
      key = "cc-yield",
      at = "1/4 yd3 spilt of 9 yd3 is 2.8 %",
      standing = Standing.PUBLISHED)
  public static double orderM3(double measuredM3, double marginM3, double spillPercent) {
    return (measuredM3 + marginM3) * (1 + spillPercent / 100);
  }

  /**
   * Returns Student's t that a mean's error stays below with a confidence (one-sided).
   *
   * @param confidencePercent from 50 to below 100
   * @param degreesOfFreedom points less the three of the plane, at least one
   */
  @Source(
      rule = "CON-10",
      says =
          "t is Student's, one-sided at the Order confidence, with three degrees of freedom fewer"
              + " than points",
      value = "90 %",
      standing = Standing.COMMON_PRACTICE)
  public static double t(double confidencePercent, int degreesOfFreedom) {
    double low = 0;
    double high = LARGEST_T;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (confidence(middle, degreesOfFreedom) * 100 < confidencePercent) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /**
   * Probability that Student's t stays below a value, by the finite sums for whole degrees of
   * freedom: with the angle of tangent t/√ν, powers of its cosine.
   */
  private static double confidence(double t, int nu) {
    double angle = StrictMath.atan(t / Math.sqrt(nu));
    double cosine = StrictMath.cos(angle);
    boolean odd = nu % 2 == 1;
    double term = odd ? cosine : 1;
    double sum = nu == 1 ? 0 : term;
    for (int k = odd ? 3 : 2; k < nu - 1; k += 2) {
      term *= cosine * cosine * (k - 1) / k;
      sum += term;
    }
    double inside = StrictMath.sin(angle) * sum;
    double both = odd ? 2 / Math.PI * (angle + inside) : inside;
    return (1 + both) / 2;
  }

  /** Returns whether one measured depth is more than 3/4 in under the thickness. */
  @Source(
      rule = "CON-10",
      says = "No point of a floor is thinner than its thickness by more than 3/4 in",
      value = "3/4 in",
      key = "aci-117",
      at = "117-10, § 4.5.4",
      standing = Standing.PUBLISHED)
  public static boolean isThinPoint(Length depth, Length thickness) {
    return thickness.minus(depth).isMoreThan(THIN_POINT);
  }

  /** Returns whether a mean depth is more than 3/8 in under the thickness. */
  @Source(
      rule = "CON-10",
      says = "The mean of a floor is not thinner than its thickness by more than 3/8 in",
      value = "3/8 in",
      key = "aci-117",
      at = "117-10, § 4.5.4",
      standing = Standing.PUBLISHED)
  public static boolean isThinMean(Length mean, Length thickness) {
    return thickness.minus(mean).isMoreThan(THIN_MEAN);
  }
}
