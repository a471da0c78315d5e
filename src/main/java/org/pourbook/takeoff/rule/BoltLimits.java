package org.pourbook.takeoff.rule;

import java.util.Comparator;
import java.util.List;
import org.pourbook.measure.BoltSize;
import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** What the code asks of anchor bolts (BOLT-3, BOLT-4). */
public final class BoltLimits {

  public static final Length LEAST_EMBEDMENT = Length.ofInches(7);
  public static final Length LEAST_DIAMETER = Length.ofInches(1, 2);
  public static final Length LARGEST_END = Length.ofInches(12);

  private static final Length BELOW_BOLT = Length.ofInches(3);

  private BoltLimits() {}

  /** Returns how deep a bolt stands in the concrete: its length less what projects. */
  @Source(
      rule = "BOLT-3",
      says = "Embedment is the bolt's length less its projection: plate, washer, nut, two threads",
      value = "projection: plate + 1 in; 1/2 x 10 bolt",
      key = "bolt-projection",
      standing = Standing.FROM_MEMORY)
  public static Length embedment(BoltSize bolt, Length projection) {
    return bolt.length().minus(projection);
  }

  /** Returns whether a bolt is embedded deep enough. */
  @Source(
      rule = "BOLT-3",
      says = "Anchor bolts are embedded at least 7 in",
      value = "7 in",
      key = "irc-r403",
      at = "R403.1.6",
      standing = Standing.PUBLISHED)
  public static boolean isDeepEnough(Length embedment) {
    return !embedment.isLessThan(LEAST_EMBEDMENT);
  }

  /**
   * Returns the bolts, shortest first, then thinnest, that pass with a projection: 7 in embedded,
   * at least 1/2 in and no thinner than the bolt they stand for.
   */
  @Source(
      rule = "BOLT-3",
      says = "A bolt too short is told with the shortest on offer that passes",
      standing = Standing.COMMON_PRACTICE)
  public static List<BoltSize> passing(List<BoltSize> onOffer, BoltSize asked, Length projection) {
    Length thinnest = LEAST_DIAMETER.max(asked.diameter());
    return onOffer.stream()
        .filter(bolt -> isDeepEnough(embedment(bolt, projection)))
        .filter(bolt -> !bolt.diameter().isLessThan(thinnest))
        .sorted(
            Comparator.comparing(BoltSize::length)
                .thenComparing(BoltSize::diameter)
                .thenComparing(BoltSize::designation))
        .toList();
  }

  /** Returns the depth of concrete that a bolt asks for: embedment and 3 in below it. */
  @Source(
      rule = "BOLT-3",
      says = "The concrete is at least 3 in deeper than the bolt: cover against the ground",
      value = "3 in",
      key = "aci-318-19",
      at = "Table 20.5.1.3.1",
      standing = Standing.PUBLISHED)
  public static Length depthAsked(Length embedment) {
    return embedment.plus(BELOW_BOLT);
  }

  /** Returns whether a bolt's distance from the end of its plate piece is within the code. */
  @Source(
      rule = "BOLT-4",
      says = "One bolt within 12 in and at least 7 diameters of each end of a plate piece",
      value = "12 in; 7 diameters",
      key = "irc-r403",
      at = "R403.1.6",
      standing = Standing.PUBLISHED)
  public static boolean isEndSound(Length end, Length diameter) {
    return !end.isMoreThan(LARGEST_END)
        && !end.isLessThan(diameter.times(BoltLayout.END_DIAMETERS));
  }

  /** Returns whether a bolt is thick enough. */
  @Source(
      rule = "BOLT-4",
      says = "Anchor bolts are at least 1/2 in thick",
      value = "1/2 in",
      key = "irc-r403",
      at = "R403.1.6",
      standing = Standing.PUBLISHED)
  public static boolean isThickEnough(Length diameter) {
    return !diameter.isLessThan(LEAST_DIAMETER);
  }

  /** Returns whether bolts stand close enough. */
  @Source(
      rule = "BOLT-4",
      says = "Anchor bolts are at most 6 ft apart",
      value = "6 ft",
      key = "irc-r403",
      at = "R403.1.6",
      standing = Standing.PUBLISHED)
  public static boolean isCloseEnough(Length spacing) {
    return !spacing.isMoreThan(BoltLayout.LARGEST_SPACING);
  }
}
