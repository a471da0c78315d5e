package org.pourbook.buy;

import java.util.List;
import org.pourbook.problem.Problem;

/**
 * What one supplier offers of a request.
 *
 * @param asked the lines asked for, the same whoever is asked
 * @param lines at least one a line asked for, in their order
 * @param deliveries what comes on one day to one place, with its fees and tax
 * @param problems lines that cannot be cut from the supplier's stock
 */
public record Quoted(
    List<Asked> asked,
    List<QuoteLine> lines,
    List<Order> deliveries,
    List<CutSheet> cutSheets,
    List<Problem> problems) {
  public Quoted {
    asked = List.copyOf(asked);
    lines = List.copyOf(lines);
    deliveries = List.copyOf(deliveries);
    cutSheets = List.copyOf(cutSheets);
    problems = List.copyOf(problems);
  }

  /** Returns how many lines asked for have something that is not offered. */
  public long missing() {
    return lines.stream()
        .filter(QuoteLine::isMissing)
        .map(line -> List.of(line.job(), line.key().normal()))
        .distinct()
        .count();
  }
}
