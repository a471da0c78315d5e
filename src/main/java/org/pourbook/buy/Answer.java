package org.pourbook.buy;

import java.util.Optional;
import org.pourbook.problem.Problem;

/**
 * What a supplier answers to a lot.
 *
 * @param asked the lot as it was asked for; {@code choice} may hold it in another material or size
 * @param choice what is offered; empty where nothing is
 * @param says what is offered in place of what was asked, or why nothing is
 * @param problem why it cannot be cut
 */
record Answer(
    Lot asked,
    Optional<Choice> choice,
    QuoteLine.Standing standing,
    String says,
    Optional<Problem> problem) {}
