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
 */
public record Joined(
    Length length, int joints, Length lap, Length shortest, Length longest, int courses) {}
