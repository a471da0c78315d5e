package org.pourbook.cut;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.pourbook.measure.Length;

/**
 * The least cost of a small job with runs: every division of every course group by itself, each
 * choice cut in every way.
 */
final class ExhaustiveRuns {
  private final CutJob job;
  private final Map<List<Long>, Long> known = new HashMap<>();

  private ExhaustiveRuns(CutJob job) {
    this.job = job;
  }

  /** Returns the least cost in micros, {@link ExhaustiveSearch#NONE} where there is no plan. */
  static long leastCost(CutJob job) {
    return new ExhaustiveRuns(job).least();
  }

  private long least() {
    Set<List<Long>> choices = new HashSet<>();
    choices.add(List.of());
    for (CutJob.Run run : job.runs()) {
      for (int n = 0; n < run.count(); n++) {
        choices = withOneMore(choices, run);
      }
    }
    long best = ExhaustiveSearch.NONE;
    for (List<Long> pieces : choices) {
      best = Math.min(best, known.computeIfAbsent(pieces, this::cost));
    }
    return best;
  }

  private Set<List<Long>> withOneMore(Set<List<Long>> before, CutJob.Run run) {
    List<List<Long>> divisions = new ArrayList<>();
    long step = CutJobs.STEP.nanometres();
    divide(
        run.total().nanometres() / step,
        run.pieces(),
        run.shortest().nanometres() / step,
        new ArrayList<>(),
        divisions);
    long longest = run.longest().nanometres() / step;
    divisions.removeIf(division -> division.get(0) > longest);
    Set<List<Long>> after = new HashSet<>();
    for (List<Long> choice : before) {
      for (List<Long> division : divisions) {
        List<Long> all = new ArrayList<>(choice);
        for (int course = 0; course < run.courses(); course++) {
          all.addAll(division);
        }
        all.sort(null);
        after.add(all);
      }
    }
    return after;
  }

  private static void divide(
      long left, int pieces, long shortest, List<Long> before, List<List<Long>> divisions) {
    if (pieces == 1) {
      if (left >= shortest && (before.isEmpty() || left <= before.get(before.size() - 1))) {
        List<Long> division = new ArrayList<>(before);
        division.add(left);
        divisions.add(division);
      }
      return;
    }
    for (long piece = Math.max(1, shortest); piece < left; piece++) {
      if (before.isEmpty() || piece <= before.get(before.size() - 1)) {
        before.add(piece);
        divide(left - piece, pieces - 1, shortest, before, divisions);
        before.remove(before.size() - 1);
      }
    }
  }

  private long cost(List<Long> ofRuns) {
    List<CutJob.Piece> pieces = new ArrayList<>(job.pieces());
    for (long length : ofRuns) {
      Length piece = CutJobs.STEP.times(length);
      if (job.stock().stream().noneMatch(s -> s.limit() > 0 && !piece.isMoreThan(s.length()))) {
        return ExhaustiveSearch.NONE;
      }
      pieces.add(new CutJob.Piece(piece, 1, "run"));
    }
    return ExhaustiveSearch.leastCost(new CutJob(pieces, job.stock(), job.kerf(), job.step()));
  }
}
