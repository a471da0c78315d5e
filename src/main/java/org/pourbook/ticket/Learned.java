package org.pourbook.ticket;

/**
 * The waste that pours of a kind really took (TICK-5).
 *
 * @param kind a kind of section, or {@code mixed} where a pour holds several
 * @param netM3 plan volume of those pours [m3]
 * @param deliveredM3 what came [m3]
 * @param wastePercent of the net
 * @param spread sample standard deviation of the pours' waste [percent]; NaN for one pour
 */
public record Learned(
    String kind, int pours, double netM3, double deliveredM3, double wastePercent, double spread) {}
