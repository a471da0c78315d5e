package org.pourbook.takeoff.rule;

import java.util.List;
import java.util.stream.IntStream;
import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** Where the anchor bolts of a plate piece stand (BOLT-2). */
public final class BoltLayout {

  /** The largest spacing that the code allows. */
  public static final Length LARGEST_SPACING = Length.ofFeet(6);

  /** Pieces under this length have one bolt, in the middle third. */
  public static final Length ONE_BOLT_UNDER = Length.ofInches(24);

  /** Pieces up to this length have none. */
  public static final Length NO_BOLT_UP_TO = Length.ofInches(12);

  /** A bolt stands at least so many of its diameters from the end of a piece. */
  public static final int END_DIAMETERS = 7;

  private BoltLayout() {}

  /** Returns the spacing to lay out by where none is written: the code's 6 ft less a tolerance. */
  @Source(
      rule = "BOLT-2",
      says =
          "Anchor bolts at most 6 ft apart; laid out a tolerance closer where no spacing is given",
      value = "6 ft less 2 in",
      key = "irc-r403",
      at = "R403.1.6",
      standing = Standing.PUBLISHED)
  public static Length usualSpacing(Length tolerance) {
    return LARGEST_SPACING.minus(tolerance).max(Length.ofInches(1));
  }

  /**
   * Returns the distance of the first and the last bolt from the ends of a piece of at least 24 in:
   * {@code usual}, but in a short piece no more than a quarter of it or 7 diameters, whichever is
   * more; a quarter where the two bolts would meet otherwise.
   */
  @Source(
      rule = "BOLT-2",
      says = "The end bolts stand 9 in from the ends, closer in a short piece",
      value = "9 in; the larger of 7 diameters and a quarter of the piece",
      standing = Standing.COMMON_PRACTICE)
  public static Length endDistance(Length piece, Length diameter, Length usual) {
    Length quarter = piece.dividedBy(4);
    Length end = usual.min(diameter.times(END_DIAMETERS).max(quarter));
    return end.times(2).isLessThan(piece) ? end : quarter;
  }

  /**
   * Returns the positions of the bolts of a piece, from its left end: max(2, ⌈(P − 2e) ÷ s⌉ + 1)
   * evenly spaced; one in the middle of a piece under 24 in, none in one of 12 in or less.
   *
   * @param endUsual end distance in a piece that is long enough
   */
  @Source(
      rule = "BOLT-2",
      says =
          "At least two bolts in each plate piece; an offset wall under 24 in has one bolt in the"
              + " middle third, one of 12 in or less none",
      value = "2; 24 in; 12 in",
      key = "irc-r403",
      at = "R403.1.6",
      standing = Standing.PUBLISHED)
  public static List<Length> positions(
      Length piece, Length diameter, Length endUsual, Length spacing) {
    if (!piece.isMoreThan(NO_BOLT_UP_TO)) {
      return List.of();
    }
    if (piece.isLessThan(ONE_BOLT_UNDER)) {
      return List.of(piece.dividedBy(2));
    }
    Length end = endDistance(piece, diameter, endUsual);
    Length between = piece.minus(end.times(2));
    int spaces = Math.max(1, between.ceilDiv(spacing));
    return IntStream.rangeClosed(0, spaces)
        .mapToObj(i -> end.plus(between.times(i).dividedBy(spaces)))
        .toList();
  }
}
