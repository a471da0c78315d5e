package org.pourbook.cut;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pourbook.measure.Length;

/** Replays a plan against its job, knowing nothing of how the plan was made. */
final class PlanCheck {
  private PlanCheck() {}

  /**
   * Returns the plan when it holds: every run is divided into as many pieces as it has, none under
   * its shortest or over its longest, together as long as the run with its laps; every piece is
   * cut, at its length on the step and for its place, no stock is over its length with its kerfs or
   * over its limit, and the cost adds up.
   *
   * @throws IllegalStateException on a defect
   */
  static CutResult.Planned check(CutJob job, CutResult.Planned plan) {
    checkDivisions(job, plan);
    require(wanted(job, plan).equals(cut(plan)), "pieces cut are not the pieces wanted");
    Map<CutJob.Stock, Long> opened = new LinkedHashMap<>();
    long cost = 0;
    for (CutResult.Pattern pattern : plan.patterns()) {
      checkPattern(job, pattern);
      opened.merge(pattern.stock(), (long) pattern.times(), Long::sum);
      cost = Math.addExact(cost, pattern.times() * pattern.stock().costMicros());
    }
    opened.forEach((stock, count) -> require(count <= limit(job, stock), "over the limit"));
    require(cost == plan.costMicros(), "the cost does not add up");
    require(plan.boundMicros() <= cost && plan.boundMicros() >= 0, "the bound is above the cost");
    require(
        plan.anywhereMicros() <= plan.boundMicros() && plan.anywhereMicros() >= 0,
        "the bound for joints anywhere is above the bound");
    return plan;
  }

  private static void checkDivisions(CutJob job, CutResult.Planned plan) {
    Map<CutJob.Run, Long> open = new LinkedHashMap<>();
    job.runs().forEach(run -> open.merge(run, (long) run.count(), Long::sum));
    for (CutResult.Division division : plan.divisions()) {
      CutJob.Run run = division.run();
      require(division.times() > 0 && open.containsKey(run), "a run was not asked for");
      open.merge(run, -(long) division.times(), Long::sum);
      require(division.pieces().size() == run.pieces(), "a run has other joints");
      Length sum = Length.ZERO;
      for (Length piece : division.pieces()) {
        require(!piece.isLessThan(run.shortest()), "a piece of a run is too short");
        require(!piece.isMoreThan(run.longest()), "a piece of a run is too long");
        sum = sum.plus(piece);
      }
      require(sum.equals(run.total().roundedUpTo(job.step())), "a run is not as long as it is");
    }
    require(open.values().stream().allMatch(left -> left == 0), "a run is not made");
  }

  private static void checkPattern(CutJob job, CutResult.Pattern pattern) {
    require(pattern.times() > 0 && !pattern.cuts().isEmpty(), "a pattern cuts nothing");
    require(job.stock().contains(pattern.stock()), "stock is not on offer");
    require(pattern.offcut().nanometres() >= 0, "an offcut is negative");
    Length used = Length.ZERO;
    int pieces = 0;
    Length before = pattern.cuts().get(0).length();
    for (CutResult.Cut cut : pattern.cuts()) {
      require(cut.count() > 0, "a cut has no pieces");
      require(!cut.length().isMoreThan(before), "cuts are not longest first");
      used = used.plus(cut.length().times(cut.count()));
      pieces += cut.count();
      before = cut.length();
    }
    Length board = pattern.stock().length().roundedDownTo(job.step());
    require(
        !used.plus(job.kerf().times(pieces - 1)).isMoreThan(board), "cuts are over their stock");
    Length rest = board.minus(used).minus(job.kerf().times(pieces)).max(Length.ZERO);
    require(pattern.offcut().equals(rest), "an offcut is not what is left");
  }

  /** Equal offers (same id, length, price) count together. */
  private static long limit(CutJob job, CutJob.Stock stock) {
    return job.stock().stream().filter(stock::equals).mapToLong(CutJob.Stock::limit).sum();
  }

  private static Map<List<Object>, Long> wanted(CutJob job, CutResult.Planned plan) {
    Map<List<Object>, Long> count = new LinkedHashMap<>();
    for (CutJob.Piece piece : job.pieces()) {
      Length length = piece.length().roundedUpTo(job.step());
      count.merge(List.of(length, piece.goesTo()), (long) piece.count(), Long::sum);
    }
    for (CutResult.Division division : plan.divisions()) {
      long each = (long) division.times() * division.run().courses();
      for (Length length : division.pieces()) {
        count.merge(List.of(length, division.run().goesTo()), each, Long::sum);
      }
    }
    return count;
  }

  private static Map<List<Object>, Long> cut(CutResult.Planned plan) {
    Map<List<Object>, Long> count = new LinkedHashMap<>();
    for (CutResult.Pattern pattern : plan.patterns()) {
      for (CutResult.Cut cut : pattern.cuts()) {
        long pieces = (long) cut.count() * pattern.times();
        count.merge(List.of(cut.length(), cut.goesTo()), pieces, Long::sum);
      }
    }
    return count;
  }

  private static void require(boolean holds, String defect) {
    if (!holds) {
      throw new IllegalStateException("cut plan: " + defect);
    }
  }
}
