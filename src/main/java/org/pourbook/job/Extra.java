package org.pourbook.job;

import java.util.Optional;
import org.pourbook.problem.Place;

/**
 * Something no rule computes, priced by (Material = what, Size) like the rest.
 *
 * @param unit as written; {@code each}, {@code ft}, {@code day} …
 */
public record Extra(
    String what,
    String size,
    double quantity,
    String unit,
    int pour,
    Optional<String> section,
    ExtraKind kind,
    String notes,
    Place place) {}
