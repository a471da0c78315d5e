package org.pourbook.cut;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Runs of a job that may be divided alike, wherever they go. Lengths are nanometres on the job's
 * step; a division is the lengths of one course, longest first.
 *
 * @param total of the pieces of one course
 * @param pieces of one course
 * @param shortest no piece is shorter
 * @param longest no piece is longer, and no stock
 * @param runs of the job, in its order
 */
record RunKind(
    long total, int pieces, long shortest, long longest, int courses, List<CutJob.Run> runs) {

  private record Key(long total, int pieces, long shortest, long longest, int courses) {}

  /** Returns the kinds in the order in which the job first has them. */
  static List<RunKind> of(CutJob job) {
    Map<Key, List<CutJob.Run>> runs = new LinkedHashMap<>();
    long step = job.step().nanometres();
    long stock = longestStock(job);
    for (CutJob.Run run : job.runs()) {
      Key key =
          new Key(
              run.total().roundedUpTo(job.step()).nanometres(),
              run.pieces(),
              Math.max(step, run.shortest().roundedUpTo(job.step()).nanometres()),
              Math.min(stock, run.longest().roundedDownTo(job.step()).nanometres()),
              run.courses());
      runs.computeIfAbsent(key, k -> new ArrayList<>()).add(run);
    }
    List<RunKind> kinds = new ArrayList<>();
    runs.forEach(
        (key, of) ->
            kinds.add(
                new RunKind(
                    key.total(),
                    key.pieces(),
                    key.shortest(),
                    key.longest(),
                    key.courses(),
                    List.copyOf(of))));
    return kinds;
  }

  private static long longestStock(CutJob job) {
    return job.stock().stream()
        .filter(stock -> stock.limit() > 0)
        .mapToLong(stock -> stock.length().roundedDownTo(job.step()).nanometres())
        .max()
        .orElse(0);
  }

  /** Returns how many runs there are, each of {@link #courses}. */
  int count() {
    return runs.stream().mapToInt(CutJob.Run::count).sum();
  }

  /** Returns the shortest piece of any division. */
  long least() {
    return Math.max(shortest, total - (pieces - 1) * longest);
  }

  /** Returns the longest piece of any division. */
  long most() {
    return Math.min(longest, total - (pieces - 1) * shortest);
  }

  /**
   * Returns the division of full lengths first, the rest last; where that would be too short, the
   * one before gives it what it lacks. Empty where the stock is too short or the run is.
   */
  Optional<List<Long>> fullFirst() {
    if (total > pieces * longest || total < pieces * shortest) {
      return Optional.empty();
    }
    List<Long> division = new ArrayList<>();
    long left = total;
    for (int after = pieces - 1; after >= 0; after--) {
      long piece = Math.min(longest, left - after * shortest);
      division.add(piece);
      left -= piece;
    }
    return Optional.of(List.copyOf(division));
  }

  /**
   * Returns the least length that the piece at {@code place} has, the longest being at 0: those
   * before it are no longer than the longest stock, those behind it no longer than itself.
   */
  long atLeast(int place) {
    long rest = total - place * longest;
    long pieceOfRest = -Math.floorDiv(-rest, (long) pieces - place);
    return Math.max(shortest, pieceOfRest);
  }
}
