package org.pourbook.ticket;

/**
 * A job's concrete of one pour as planned, for what is learnt of waste.
 *
 * @param kind the kind of all its sections, else {@code mixed}
 * @param date ISO date, empty when the pour has none
 * @param netM3 plan volume [m3]
 */
public record PourPlanned(String job, int pour, String date, String kind, double netM3) {}
