package org.pourbook.job;

import org.pourbook.measure.Length;

/**
 * A turned-down edge.
 *
 * @param depth total depth from the slab's top
 * @param width width at the bottom
 * @param sides the sides that have it
 */
public record Edge(Length depth, Length width, Sides sides) {}
