package org.pourbook.job;

/** What an extra is. */
public enum ExtraKind {
  SET_IN("set in"),
  MATERIAL("material"),
  RENT("rent"),
  SERVICE("service"),
  CHECK("check");

  private final String label;

  ExtraKind(String label) {
    this.label = label;
  }

  /** Returns the word used in workbooks. */
  public String label() {
    return label;
  }
}
