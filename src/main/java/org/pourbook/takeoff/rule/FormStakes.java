package org.pourbook.takeoff.rule;

import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** The stakes that hold a run of form boards (FORM-4). */
public final class FormStakes {

  /** Faces up to this height are held by the usual stakes. */
  public static final Length LOW_FACE = Length.ofInches(6);

  private static final Length DRIVEN = Length.ofInches(18);

  private FormStakes() {}

  /** Returns the spacing for a face: {@code low} up to 6 in high, {@code high} above. */
  @Source(
      rule = "FORM-4",
      says = "Stakes stand about every 2 ft",
      value = "2 ft above 6 in high",
      key = "radford-6",
      at = "edge forms of a small slab or walk",
      standing = Standing.PUBLISHED)
  @Source(
      rule = "FORM-4",
      says = "Stakes of a low form may stand wider",
      value = "3 ft up to 6 in high",
      standing = Standing.COMMON_PRACTICE)
  public static Length spacing(Length face, Length low, Length high) {
    return face.isMoreThan(LOW_FACE) ? high : low;
  }

  /** Returns ⌈run ÷ spacing⌉ + 1 stakes, and one more at each butt. */
  @Source(
      rule = "FORM-4",
      says = "A stake at both ends of each run, between them at the spacing, one more at each butt",
      key = "masonry-concrete",
      at = "ch. 3.3.1",
      standing = Standing.PUBLISHED)
  public static int count(Length run, Length spacing, int butts) {
    return run.ceilDiv(spacing) + 1 + butts;
  }

  /** Returns the length of a stake: {@code usual} up to 6 in high, else the height + 18 in. */
  @Source(
      rule = "FORM-4",
      says = "Stakes of a low form are 18 to 24 in long, at least half of it driven",
      value = "24 in up to 6 in high",
      key = "stake-size",
      standing = Standing.FROM_MEMORY)
  @Source(
      rule = "FORM-4",
      says = "Stakes of a higher form are as long as the face is high, and 18 in to be driven",
      value = "height + 18 in",
      standing = Standing.COMMON_PRACTICE)
  public static Length length(Length face, Length usual) {
    return face.isMoreThan(LOW_FACE) ? face.plus(DRIVEN) : usual;
  }
}
