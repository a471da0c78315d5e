package org.pourbook.cut;

import java.util.ArrayList;
import java.util.List;

/** Writes a packing as the plan of its job: lengths again, and what each cut is for. */
final class PlanWriter {
  private final CutJob job;
  private final Normalised normalised;

  /** Pieces of each label already given out, by item. */
  private final int[] label;

  private final int[] givenOfLabel;

  private PlanWriter(CutJob job, Normalised normalised) {
    this.job = job;
    this.normalised = normalised;
    this.label = new int[normalised.model().items()];
    this.givenOfLabel = new int[normalised.model().items()];
  }

  /**
   * Returns the plan of a packing. Pieces of one length are given to the patterns in the job's
   * order, so a pattern is split only where what it is for changes.
   *
   * @param bound of the cost, in the model's cost unit
   */
  static CutResult.Planned write(CutJob job, Normalised normalised, Packing packing, long bound) {
    PlanWriter writer = new PlanWriter(job, normalised);
    List<CutResult.Pattern> patterns = new ArrayList<>();
    for (Packing.Lot lot : packing.lots()) {
      writer.writeLot(lot, patterns);
    }
    long unit = normalised.costUnit();
    return new CutResult.Planned(
        patterns,
        Math.multiplyExact(packing.cost(), unit),
        Math.multiplyExact(Math.min(bound, packing.cost()), unit));
  }

  private void writeLot(Packing.Lot lot, List<CutResult.Pattern> patterns) {
    Column column = lot.column();
    int left = lot.times();
    while (left > 0) {
      int times = Math.max(1, Math.min(left, timesWithOneLabel(column)));
      List<CutResult.Cut> cuts = new ArrayList<>();
      for (int at = 0; at < column.item().length; at++) {
        give(column.item()[at], column.count()[at], times, cuts);
      }
      patterns.add(pattern(column, times, cuts));
      left -= times;
    }
  }

  /** Returns how many boards can be cut before a label of any of their pieces runs out. */
  private int timesWithOneLabel(Column column) {
    int times = Integer.MAX_VALUE;
    for (int at = 0; at < column.item().length; at++) {
      int item = column.item()[at];
      int open = normalised.labels().get(item).get(label[item]).count() - givenOfLabel[item];
      times = Math.min(times, open / column.count()[at]);
    }
    return times;
  }

  private void give(int item, int count, int times, List<CutResult.Cut> cuts) {
    int left = count * times;
    while (left > 0) {
      CutJob.Piece piece = normalised.labels().get(item).get(label[item]);
      int given = Math.min(left, piece.count() - givenOfLabel[item]);
      cuts.add(new CutResult.Cut(normalised.lengths().get(item), given / times, piece.goesTo()));
      givenOfLabel[item] += given;
      left -= given;
      if (givenOfLabel[item] == piece.count()) {
        label[item]++;
        givenOfLabel[item] = 0;
      }
    }
  }

  private CutResult.Pattern pattern(Column column, int times, List<CutResult.Cut> cuts) {
    CutJob.Stock stock = normalised.stocks().get(column.stock());
    return new CutResult.Pattern(stock, times, cuts, Offcut.of(job, stock, cuts));
  }
}
