package org.pourbook.job;

import org.pourbook.measure.Length;
import org.pourbook.problem.Place;

/** A depth taken from the top-of-slab line to the prepared base. */
public record DepthCheck(String section, Length x, Length y, Length depth, Place place) {}
