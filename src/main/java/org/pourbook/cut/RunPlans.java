package org.pourbook.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import org.pourbook.measure.Length;

/** Plans of a job whose runs are divided in some way. */
final class RunPlans {
  private final CutJob job;
  private final List<RunKind> kinds;
  private final Function<CutModel, Planning.Found> search;
  private final Function<CutModel, Planning.Found> quickSearch;

  private RunPlans(
      CutJob job,
      List<RunKind> kinds,
      Function<CutModel, Planning.Found> search,
      Function<CutModel, Planning.Found> quickSearch) {
    this.job = job;
    this.kinds = kinds;
    this.search = search;
    this.quickSearch = quickSearch;
  }

  /**
   * Returns the plan of a priced job with runs.
   *
   * @param effort of the choice where joints lie; empty: full lengths first
   */
  static CutResult plan(
      CutJob job, Function<CutModel, Planning.Found> search, Optional<Effort> effort) {
    List<RunKind> kinds = RunKind.of(job);
    Optional<RunChoice> first = RunChoice.fullFirst(kinds);
    if (first.isEmpty()) {
      return new CutResult.Impossible(true, tooLong(kinds));
    }
    Effort quick = effort.orElse(Effort.USUAL).quick();
    RunPlans plans = new RunPlans(job, kinds, search, model -> CutSearch.find(model, quick));
    CutResult asFirst = plans.full(first.get());
    return effort.isEmpty() ? asFirst : plans.improved(first.get(), asFirst, effort.get());
  }

  private CutResult improved(RunChoice first, CutResult asFirst, Effort effort) {
    Optional<CutResult.Planned> plan = planned(asFirst);
    OptionalLong known =
        plan.map(p -> OptionalLong.of(p.costMicros())).orElse(OptionalLong.empty());
    OptionalLong bound = RunBound.of(job, kinds, known, effort);
    if (bound.isEmpty()) {
      return new CutResult.Impossible(true, Planning.NOT_ENOUGH);
    }
    RunChoice best = RunSearch.from(first, plan, bound.getAsLong(), job, kinds, this, effort);
    CutResult asBest = best.equals(first) ? asFirst : full(best);
    CutResult result = cheaper(asFirst, asBest) ? asFirst : asBest;
    return planned(result).<CutResult>map(p -> anywhere(p, bound.getAsLong())).orElse(result);
  }

  private static boolean cheaper(CutResult one, CutResult other) {
    return planned(one).isPresent()
        && planned(other).map(p -> p.costMicros() >= planned(one).get().costMicros()).orElse(true);
  }

  private CutResult.Planned anywhere(CutResult.Planned plan, long boundMicros) {
    return PlanCheck.check(
        job,
        new CutResult.Planned(
            plan.patterns(),
            plan.costMicros(),
            plan.boundMicros(),
            plan.divisions(),
            Math.min(plan.boundMicros(), boundMicros)));
  }

  private static Optional<CutResult.Planned> planned(CutResult result) {
    return result instanceof CutResult.Planned plan ? Optional.of(plan) : Optional.empty();
  }

  /** Returns the plan of a choice, with little effort; empty where none is found. */
  Optional<CutResult.Planned> quick(RunChoice choice) {
    return planned(plan(choice, quickSearch));
  }

  private CutResult full(RunChoice choice) {
    return plan(choice, search);
  }

  private CutResult plan(RunChoice choice, Function<CutModel, Planning.Found> by) {
    List<CutResult.Division> divisions = choice.divisions(kinds);
    List<CutJob.Piece> pieces = new ArrayList<>(job.pieces());
    pieces.addAll(RunChoice.pieces(divisions));
    CutResult result = Planning.plan(job.ofPieces(pieces), by, Optional.empty());
    if (!(result instanceof CutResult.Planned plan)) {
      return result;
    }
    return PlanCheck.check(
        job,
        new CutResult.Planned(
            plan.patterns(), plan.costMicros(), plan.boundMicros(), divisions, 0));
  }

  private static String tooLong(List<RunKind> kinds) {
    RunKind kind = kinds.stream().filter(k -> k.fullFirst().isEmpty()).findFirst().orElseThrow();
    return kind.longest() == 0
        ? Planning.NO_STOCK
        : "A run of "
            + kind.runs().get(0).total()
            + " in "
            + kind.pieces()
            + " pieces cannot be made of a longest stock of "
            + new Length(kind.longest())
            + ".";
  }
}
