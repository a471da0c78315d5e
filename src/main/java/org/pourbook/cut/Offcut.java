package org.pourbook.cut;

import java.util.List;
import org.pourbook.measure.Length;

/** What is left of a stock piece. */
final class Offcut {
  private Offcut() {}

  /**
   * Returns the length left after all cuts, each with its kerf: the one that frees the offcut may
   * run off the end. Below zero by more than a kerf where the cuts do not fit.
   */
  static Length of(CutJob job, CutJob.Stock stock, List<CutResult.Cut> cuts) {
    Length left = stock.length().roundedDownTo(job.step());
    int pieces = 0;
    for (CutResult.Cut cut : cuts) {
      left = left.minus(cut.length().times(cut.count()));
      pieces += cut.count();
    }
    Length afterLastCut = left.minus(job.kerf().times(pieces));
    Length beforeLastCut = afterLastCut.plus(job.kerf());
    if (beforeLastCut.nanometres() < 0) {
      throw new IllegalStateException("cuts are longer than their stock " + stock.id());
    }
    return afterLastCut.max(Length.ZERO);
  }
}
