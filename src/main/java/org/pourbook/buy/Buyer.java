package org.pourbook.buy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pourbook.cut.CutPlanner;
import org.pourbook.job.Job;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.TakeOff;

/** Needs turned into orders, loads and money. */
public final class Buyer {

  private final PriceBook prices;
  private final CutPlanner planner;
  private final List<Problem> problems = new ArrayList<>();

  private Buyer(PriceBook prices, CutPlanner planner) {
    this.prices = prices;
    this.planner = planner;
  }

  /**
   * Returns what is bought for the jobs. Whatever cannot be cut or priced is listed without a
   * price; nothing is left out. The ways to meet each lot are worked out in parallel, and taken in
   * the lots' order, so that the number of cores changes nothing.
   */
  public static Bought buy(List<TakeOff> takeOffs, PriceBook prices, CutPlanner planner) {
    return new Buyer(prices, planner).buy(takeOffs);
  }

  private Bought buy(List<TakeOff> takeOffs) {
    List<Job> jobs = takeOffs.stream().map(TakeOff::job).toList();
    List<Lot> lots = Lots.of(takeOffs, prices);
    List<CutOptions.Result> ways =
        lots.parallelStream().map(lot -> ways(lot, prices, planner)).toList();
    List<Offered> offered = new ArrayList<>();
    for (int i = 0; i < lots.size(); i++) {
      offered.add(offered(lots.get(i), ways.get(i)));
    }
    List<Choice> choices = CheapestTotal.choose(offered);
    List<OrderDraft> drafts = OrderDrafts.of(choices);
    List<Line> lines = JobLines.of(jobs, choices, drafts);
    Loads.Result loads = Loads.of(takeOffs, choices);
    List<Bought.BuyCaution> cautions = new ArrayList<>(BuyCautions.of(choices));
    cautions.addAll(loads.cautions());
    return new Bought(
        lines,
        Orders.of(drafts, lot -> ways(lot, prices, planner).options()),
        loads.loads(),
        CutSheets.of(choices),
        JobMoney.of(jobs, lines, drafts),
        cautions,
        problems);
  }

  private Offered offered(Lot lot, CutOptions.Result ways) {
    notCut(lot, ways).ifPresent(problems::add);
    return new Offered(lot, ways.options());
  }

  /** Returns what is told where no stock on offer holds a piece. */
  static Optional<Problem> notCut(Lot lot, CutOptions.Result ways) {
    if (ways.failures().isEmpty()) {
      return Optional.empty();
    }
    Job job = lot.jobs().get(0);
    return Optional.of(
        new Problem(
            job.place(),
            job.code(),
            lot.key() + " cannot be cut: " + String.join("; ", ways.failures()),
            "a Stock length that holds the longest piece",
            Problem.Effect.NOTE));
  }

  /** Returns the ways to meet a lot from the prices, and why it cannot be cut where that is so. */
  static CutOptions.Result ways(Lot lot, PriceBook prices, CutPlanner planner) {
    return switch (lot.planning()) {
      case CUT ->
          lot.hasPieces()
              ? CutOptions.of(lot, prices, planner)
              : sure(CountedOptions.of(lot, prices));
      case COUNTED, STRIPS, SERVICE -> sure(CountedOptions.of(lot, prices));
      case BY_POUR -> sure(ConcreteOptions.of(lot, prices));
    };
  }

  private static CutOptions.Result sure(List<Option> options) {
    return new CutOptions.Result(options, List.of());
  }
}
