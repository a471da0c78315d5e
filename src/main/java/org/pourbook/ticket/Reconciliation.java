package org.pourbook.ticket;

import java.util.List;
import org.pourbook.problem.Problem;

/** Orders, tickets and bills laid side by side. */
public record Reconciliation(
    List<Finding> findings,
    List<Matched> matched,
    List<ConcreteLoad> loads,
    List<Learned> learned,
    Billed billed,
    List<Problem> problems) {
  public Reconciliation {
    findings = List.copyOf(findings);
    matched = List.copyOf(matched);
    loads = List.copyOf(loads);
    learned = List.copyOf(learned);
    problems = List.copyOf(problems);
  }
}
