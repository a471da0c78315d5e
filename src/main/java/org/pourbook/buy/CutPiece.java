package org.pourbook.buy;

import org.pourbook.takeoff.PieceNeed;

/** Pieces to cut, and whose they are. */
record CutPiece(Portion portion, PieceNeed need) {

  /** Returns where they go, as the cut list says it; of a shared plan with the job's code. */
  String goesTo(boolean shared) {
    String mark = need.mark().isEmpty() ? "" : " (" + need.mark() + ")";
    if (!shared && mark.isEmpty()) {
      return need.goesTo(); // one text for all its cuts
    }
    return (shared ? portion.job().code() + ": " : "") + need.goesTo() + mark;
  }
}
