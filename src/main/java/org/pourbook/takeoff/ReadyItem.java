package org.pourbook.takeoff;

/**
 * A thing to have or check on pour day: a row of the Ready list.
 *
 * @param howMany a number with its unit, or empty
 */
public record ReadyItem(String what, String howMany, String why) {}
