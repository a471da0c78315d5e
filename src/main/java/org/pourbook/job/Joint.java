package org.pourbook.job;

import java.util.Optional;
import org.pourbook.measure.Length;
import org.pourbook.problem.Place;

/**
 * A joint with what crosses or fills it.
 *
 * @param side name of the section's side that it lies on, when written
 * @param bar size as written: a dowel diameter ({@code 3/4}) or bar ({@code #4})
 * @param drilled drilled and bonded into existing concrete (Embedment is written)
 * @param embedment written; empty with {@code drilled} means by the rule (DOW-1)
 */
public record Joint(
    String code,
    Optional<String> section,
    Optional<String> side,
    JointKind kind,
    Length length,
    Optional<String> bar,
    Optional<Length> spacing,
    Optional<Length> barLength,
    boolean drilled,
    Optional<Length> embedment,
    Length drop,
    Optional<Length> fillerDepth,
    Place place) {}
