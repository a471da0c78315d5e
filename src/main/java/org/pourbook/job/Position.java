package org.pourbook.job;

import org.pourbook.measure.Length;

/** A point in the job's plan, or of a part in its parent's plan. */
public record Position(Length x, Length y) {}
