package org.pourbook.takeoff;

/**
 * Something to think of before the pour.
 *
 * @param section code of the section, plate or joint; empty for the whole job
 * @param says one or two sentences with the figure found and the figure asked
 * @param rule id of the rule or the reference, e.g. {@code BOLT-4, IRC R403.1.6}
 */
public record Caution(String section, String says, String rule) {}
