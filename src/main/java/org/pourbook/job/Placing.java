package org.pourbook.job;

/** How concrete gets from the truck into the forms. */
public enum Placing {
  CHUTE("chute"),
  PUMP("pump"),
  BARROW("barrow");

  private final String label;

  Placing(String label) {
    this.label = label;
  }

  /** Returns the word used in workbooks. */
  public String label() {
    return label;
  }
}
