package org.pourbook.takeoff;

import org.pourbook.measure.Length;

/**
 * A run that is joined of pieces (FORM-3, BAR-2): how many joints it has is settled, where they lie
 * is the cut plan's.
 *
 * @param length of the run in place
 * @param joints butts or laps
 * @param lap by which two pieces overlap; zero where they are butted
 * @param shortest no piece is shorter
 * @param longest no piece is longer: the stock by which the joints were counted
 * @param courses boards one above the other, joined at the same places
 * @param tied to boards of other sizes, bought apart, that stand one above the other with these:
 *     they have equal runs, joined at the same places too
 */
public record Joined(
    Length length,
    int joints,
    Length lap,
    Length shortest,
    Length longest,
    int courses,
    boolean tied) {

  /** Makes a run of one size, which no other is tied to. */
  public Joined(
      Length length, int joints, Length lap, Length shortest, Length longest, int courses) {
    this(length, joints, lap, shortest, longest, courses, false);
  }

  /** Returns the same run of so many courses. */
  public Joined of(int other, boolean tiedToOthers) {
    return new Joined(length, joints, lap, shortest, longest, other, tiedToOthers);
  }
}
