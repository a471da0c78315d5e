package org.pourbook.problem;

/** How sure a figure or rule is. */
public enum Standing {
  /** A document gives it and was read, or is quoted. */
  PUBLISHED("published"),
  /** A document is known to give it, but was not read again. */
  FROM_MEMORY("from memory"),
  /** A fact of the trade with no source. */
  COMMON_PRACTICE("common practice");

  private final String label;

  Standing(String label) {
    this.label = label;
  }

  public String label() {
    return label;
  }
}
