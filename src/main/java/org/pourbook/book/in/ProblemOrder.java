package org.pourbook.book.in;

import java.util.Comparator;
import org.pourbook.problem.Problem;

/** The order in which problems are told: by place, then by what they say. */
final class ProblemOrder {

  static final Comparator<Problem> BY_PLACE =
      Comparator.comparing(Problem::place)
          .thenComparing(Problem::job)
          .thenComparing(Problem::effect)
          .thenComparing(Problem::expected);

  private ProblemOrder() {}
}
