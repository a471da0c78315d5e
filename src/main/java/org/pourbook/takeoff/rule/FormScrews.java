package org.pourbook.takeoff.rule;

import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** The screws of the forms (FORM-6). */
public final class FormScrews {

  public static final int A_STAKE = 2;
  public static final int A_BRACE = 4;
  public static final int A_SPLICE = 8;
  public static final int A_CORNER = 3;

  private FormScrews() {}

  /** Returns the 2-1/2 in screws: 2 a stake and board, 4 a brace, 8 a splice. */
  @Source(
      rule = "FORM-6",
      says = "Form screws 2-1/2 in at stakes, braces and splices",
      value = "2 a stake and board, 4 a brace, 8 a splice",
      standing = Standing.COMMON_PRACTICE)
  public static int count(int stakesTimesBoards, int braces, int splices) {
    return A_STAKE * stakesTimesBoards + A_BRACE * braces + A_SPLICE * splices;
  }

  /** Returns the 3 in screws: 3 a corner and board. */
  @Source(
      rule = "FORM-6",
      says = "Form screws 3 in at corners",
      value = "3 a corner and board",
      standing = Standing.COMMON_PRACTICE)
  public static int atCorners(int cornersTimesBoards) {
    return A_CORNER * cornersTimesBoards;
  }
}
