package org.pourbook.job;

/** How the top is finished. */
public enum Finish {
  TROWEL("trowel"),
  BROOM("broom"),
  FLOAT("float"),
  NONE("none");

  private final String label;

  Finish(String label) {
    this.label = label;
  }

  /** Returns the word used in workbooks. */
  public String label() {
    return label;
  }
}
