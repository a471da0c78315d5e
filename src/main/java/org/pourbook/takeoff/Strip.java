package org.pourbook.takeoff;

import java.time.LocalTime;
import org.pourbook.measure.Length;

/**
 * A strip of a floor, placed and struck off in one go: a row of the Pour plan.
 *
 * @param strip number within the section, from 1, through all sections of its count
 * @param volumeM3 its share of the section's net concrete [m3]
 * @param start when placing of it begins, at the pour's placing rate without a pause (POUR-2)
 */
public record Strip(
    String section,
    int pour,
    int strip,
    Length width,
    Length length,
    double volumeM3,
    LocalTime start) {}
