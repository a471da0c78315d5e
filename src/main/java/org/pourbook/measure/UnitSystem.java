package org.pourbook.measure;

/** The units a job is written in: US feet and inches, or metres and millimetres. */
public enum UnitSystem {
  FT_IN("ft-in"),
  M("m");

  private final String label;

  UnitSystem(String label) {
    this.label = label;
  }

  /** Returns the word used in workbooks. */
  public String label() {
    return label;
  }

  public boolean isMetric() {
    return this == M;
  }
}
