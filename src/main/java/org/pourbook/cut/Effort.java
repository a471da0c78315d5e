package org.pourbook.cut;

/**
 * How far a search goes, in steps and never in time, so that every machine finds the same plan.
 *
 * @param sums most sums of widths a knapsack may hold
 * @param rounds of column generation in one linear program
 * @param pivots in one round
 * @param columns in one linear program
 * @param exclusions linear programs that show which purchases of two stock lengths are not enough
 * @param purchases tried as fixed stock to dive into
 * @param roundings tried on a relaxation whose plan would be the proof
 * @param branches of the search over numbers of boards
 * @param runs how far to look where the joints of runs lie
 * @param steps additions of the inner loops after the first relaxation, about a nanosecond each
 */
record Effort(
    int sums,
    int rounds,
    int pivots,
    int columns,
    int exclusions,
    int purchases,
    int roundings,
    int branches,
    Runs runs,
    long steps) {
  /**
   * How far to look where the joints of runs lie.
   *
   * @param gatherings times that divisions are gathered, each with what the best plan leaves over
   * @param divisions of all kinds together, where lengths are not few
   * @param plans made besides those that the linear program over divisions suggests, of a job of
   *     few lengths
   */
  record Runs(int gatherings, int divisions, int plans) {}

  static final Effort USUAL =
      new Effort(
          100_000, 2_000, 20_000, 20_000, 10, 3, 11, 400, new Runs(1, 60, 0), 2_000_000_000L);
  static final Effort PROVING =
      new Effort(
          100_000,
          4_000,
          50_000,
          40_000,
          30,
          10,
          20,
          3_000,
          new Runs(4, 160, 400),
          10_000_000_000L);

  /** Returns the effort of one of many plans. */
  Effort quick() {
    return new Effort(sums, 200, pivots, columns, 2, 3, 3, 5, runs, steps / 50);
  }

  /** Counts steps down; the only thing here that changes. */
  static final class Steps {
    private long left;

    Steps(long left) {
      this.left = left;
    }

    void take(long steps) {
      left -= steps;
    }

    boolean areSpent() {
      return left <= 0;
    }
  }
}
