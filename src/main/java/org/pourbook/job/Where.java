package org.pourbook.job;

/** Where a section lies; decides retarder, finish, cover. */
public enum Where {
  INSIDE("inside"),
  OUTSIDE("outside"),
  GARAGE("garage");

  private final String label;

  Where(String label) {
    this.label = label;
  }

  /** Returns the word used in workbooks. */
  public String label() {
    return label;
  }
}
