package org.pourbook.job;

/** What a joint between two sections does. */
public enum JointKind {
  DOWEL("dowel"),
  TIE("tie"),
  STEP("step"),
  ISOLATION("isolation");

  private final String label;

  JointKind(String label) {
    this.label = label;
  }

  /** Returns the word used in workbooks. */
  public String label() {
    return label;
  }
}
