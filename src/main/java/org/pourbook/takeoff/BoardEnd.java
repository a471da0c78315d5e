package org.pourbook.takeoff;

/** What a form board does at the last corner of its side, going round one way (FORM-1). */
public enum BoardEnd {
  /** It covers the end of the next board: at an outside corner of the concrete. */
  LAPS(1),
  /** It stops at the face of the next board: at a re-entrant corner of the concrete. */
  STOPS_SHORT(-1),
  /** No other board meets it there. */
  OPEN(0);

  private final int thicknesses;

  BoardEnd(int thicknesses) {
    this.thicknesses = thicknesses;
  }

  /** Returns by how many board thicknesses the board is longer than its side. */
  public int thicknesses() {
    return thicknesses;
  }

  public boolean isCorner() {
    return this != OPEN;
  }
}
