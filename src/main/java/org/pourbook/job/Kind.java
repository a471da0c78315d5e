package org.pourbook.job;

/** What a section is. */
public enum Kind {
  SLAB("slab"),
  RECESS("recess"),
  THICKENING("thickening"),
  FOOTING("footing"),
  PIER("pier");

  private final String label;

  Kind(String label) {
    this.label = label;
  }

  public String label() {
    return label;
  }

  /** Returns whether the section is a part of another one: a recess or a thickening. */
  public boolean isPart() {
    return this == RECESS || this == THICKENING;
  }

  /** Returns whether the section has a floor of its own: finish, curing, joints, strips. */
  public boolean isFloor() {
    return this == SLAB || this == RECESS;
  }
}
