package org.pourbook.problem;

import java.util.List;

/** What could be read, and everything that could not. */
public record Checked<T>(T value, List<Problem> problems) {
  public Checked {
    problems = List.copyOf(problems);
  }
}
