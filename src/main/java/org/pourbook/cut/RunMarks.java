package org.pourbook.cut;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Lengths that a piece of a run may well have, so that stock is used up; in nanometres. */
final class RunMarks {
  /** Of the pieces that are cut most, so many are put together. */
  private static final int MATES = 10;

  /** More than so many pieces of a stock length are not put together. */
  private static final int TOGETHER = 3;

  private final CutJob job;
  private final Set<Long> marks = new LinkedHashSet<>();

  private RunMarks(CutJob job) {
    this.job = job;
  }

  /**
   * Returns the marks: whole stock, equal parts of it, what is left of it beside other pieces.
   *
   * @param pieces that are cut now, those of runs with them
   */
  static Set<Long> of(CutJob job, List<CutJob.Piece> pieces) {
    RunMarks made = new RunMarks(job);
    List<Long> stock =
        job.stock().stream()
            .filter(s -> s.limit() > 0)
            .map(s -> s.length().roundedDownTo(job.step()).nanometres())
            .distinct()
            .toList();
    made.marks.addAll(stock);
    long kerf = job.kerf().nanometres();
    for (int parts = 2; parts <= TOGETHER + 1; parts++) {
      for (long length : stock) {
        made.add((length + kerf) / parts - kerf);
      }
    }
    List<Long> mates = mates(job, pieces);
    for (int together = 1; together <= TOGETHER; together++) {
      for (long length : stock) {
        made.beside(mates, 0, together, length);
      }
    }
    return made.marks;
  }

  /** Returns the marks that offcuts of a plan give: a piece longer by one, or as long. */
  static Set<Long> of(CutJob job, CutResult.Planned plan) {
    RunMarks made = new RunMarks(job);
    for (CutResult.Pattern pattern : plan.patterns()) {
      long offcut = pattern.offcut().nanometres();
      if (offcut > 0) {
        made.add(offcut);
        pattern.cuts().forEach(cut -> made.add(cut.length().nanometres() + offcut));
      }
    }
    return made.marks;
  }

  private void beside(List<Long> mates, int from, int together, long left) {
    if (together == 0) {
      add(left);
      return;
    }
    for (int at = from; at < mates.size(); at++) {
      beside(mates, at, together - 1, left - mates.get(at) - job.kerf().nanometres());
    }
  }

  private void add(long length) {
    long step = job.step().nanometres();
    if (length >= step) {
      marks.add(Math.floorDiv(length, step) * step);
    }
  }

  /** Returns the lengths of which most is cut. */
  private static List<Long> mates(CutJob job, List<CutJob.Piece> pieces) {
    Map<Long, Long> byLength = new LinkedHashMap<>();
    for (CutJob.Piece piece : pieces) {
      long length = piece.length().roundedUpTo(job.step()).nanometres();
      byLength.merge(length, Math.multiplyExact(length, piece.count()), Long::sum);
    }
    List<Map.Entry<Long, Long>> most = new ArrayList<>(byLength.entrySet());
    most.sort(Map.Entry.<Long, Long>comparingByValue().reversed());
    return most.stream().limit(MATES).map(Map.Entry::getKey).toList();
  }
}
