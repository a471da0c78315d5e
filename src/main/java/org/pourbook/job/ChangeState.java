package org.pourbook.job;

/** What became of an owner's change. */
public enum ChangeState {
  OPEN("open"),
  TAKEN_UP("taken up"),
  DECLINED("declined");

  private final String label;

  ChangeState(String label) {
    this.label = label;
  }

  /** Returns the word used in workbooks. */
  public String label() {
    return label;
  }
}
