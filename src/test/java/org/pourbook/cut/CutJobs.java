package org.pourbook.cut;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.measure.Length;

/** Builds cut jobs in sixteenths of an inch and cents. */
final class CutJobs {
  static final Length STEP = Length.ofInches(1, 16);

  /** Longer than any stock. */
  static final long ANY = 1_000_000;

  private final List<CutJob.Piece> pieces = new ArrayList<>();
  private final List<CutJob.Run> runs = new ArrayList<>();
  private final List<CutJob.Stock> stock = new ArrayList<>();
  private Length kerf = Length.ZERO;

  CutJobs piece(long sixteenths, int count) {
    return piece(sixteenths, count, "form");
  }

  CutJobs piece(long sixteenths, int count, String goesTo) {
    pieces.add(new CutJob.Piece(STEP.times(sixteenths), count, goesTo));
    return this;
  }

  /** Adds runs of one course that are butted ({@code lap} 0) or lapped. */
  CutJobs run(long sixteenths, int joints, long lap, long shortest, int count) {
    return run(sixteenths, joints, lap, shortest, 1, count, "run" + runs.size());
  }

  CutJobs run(
      long sixteenths, int joints, long lap, long shortest, int courses, int count, String goesTo) {
    return run(sixteenths, joints, lap, shortest, ANY, courses, count, goesTo);
  }

  /** Adds runs whose pieces are no longer than {@code longest}, whatever the stock. */
  CutJobs run(
      long sixteenths,
      int joints,
      long lap,
      long shortest,
      long longest,
      int courses,
      int count,
      String goesTo) {
    runs.add(
        new CutJob.Run(
            STEP.times(sixteenths),
            joints,
            STEP.times(lap),
            STEP.times(shortest),
            STEP.times(longest),
            courses,
            count,
            goesTo));
    return this;
  }

  CutJobs stock(long sixteenths, long cents) {
    return stock(sixteenths, cents, Integer.MAX_VALUE);
  }

  CutJobs stock(long sixteenths, long cents, int limit) {
    String id = sixteenths + "/" + stock.size();
    stock.add(new CutJob.Stock(id, STEP.times(sixteenths), cents * 10_000, limit));
    return this;
  }

  CutJobs kerf(long sixteenths) {
    kerf = STEP.times(sixteenths);
    return this;
  }

  CutJob build() {
    return new CutJob(pieces, runs, stock, kerf, STEP);
  }

  /** Feet, in sixteenths. */
  static long feet(long feet) {
    return feet * 192;
  }
}
