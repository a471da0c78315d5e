package org.pourbook.takeoff.rule;

import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** The braces that hold the stakes of a high form (FORM-5). */
public final class FormBraces {

  private static final Length UNBRACED = Length.ofInches(8);
  private static final Length EVERY_SECOND = Length.ofInches(16);
  private static final Length FOOT = Length.ofInches(18);

  private FormBraces() {}

  /**
   * Returns the braces of a run: none up to 8 in high, ⌈stakes ÷ 2⌉ up to 16 in, one a stake above;
   * the stakes at both ends always have one.
   */
  @Source(
      rule = "FORM-5",
      says = "Braces at every second stake of a form over 8 in high, at every stake over 16 in",
      value = "8 in, 16 in",
      key = "stake-size",
      standing = Standing.FROM_MEMORY)
  public static int count(Length face, int stakes) {
    if (!face.isMoreThan(UNBRACED)) {
      return 0;
    }
    return face.isMoreThan(EVERY_SECOND) ? stakes : Math.max(2, (stakes + 1) / 2);
  }

  /** Returns the length of a brace: {@code usual}, or 1.5 × height + 18 in where that is longer. */
  @Source(
      rule = "FORM-5",
      says = "A brace is a piece of 2x4 with a heel stake, long enough to reach the ground",
      value = "36 in, or 1.5 × height + 18 in",
      standing = Standing.COMMON_PRACTICE)
  public static Length length(Length face, Length usual) {
    return usual.max(face.times(3).dividedBy(2).plus(FOOT));
  }
}
