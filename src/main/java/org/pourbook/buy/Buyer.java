package org.pourbook.buy;

import java.util.ArrayList;
import java.util.List;
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
   * price; nothing is left out.
   */
  public static Bought buy(List<TakeOff> takeOffs, PriceBook prices, CutPlanner planner) {
    return new Buyer(prices, planner).buy(takeOffs);
  }

  private Bought buy(List<TakeOff> takeOffs) {
    List<Job> jobs = takeOffs.stream().map(TakeOff::job).toList();
    List<Offered> offered = Lots.of(takeOffs, prices).stream().map(this::offered).toList();
    List<Choice> choices = CheapestTotal.choose(offered);
    List<OrderDraft> drafts = OrderDrafts.of(choices);
    List<Line> lines = JobLines.of(jobs, choices, drafts);
    Loads.Result loads = Loads.of(takeOffs, choices);
    List<Bought.BuyCaution> cautions = new ArrayList<>(BuyCautions.of(choices));
    cautions.addAll(loads.cautions());
    return new Bought(
        lines,
        Orders.of(drafts),
        loads.loads(),
        CutSheets.of(choices),
        JobMoney.of(jobs, lines, drafts),
        cautions,
        problems);
  }

  private Offered offered(Lot lot) {
    return new Offered(
        lot,
        switch (lot.planning()) {
          case COUNTED, STRIPS, SERVICE -> CountedOptions.of(lot, prices);
          case BY_POUR -> ConcreteOptions.of(lot, prices);
          case CUT -> hasPieces(lot) ? cut(lot) : CountedOptions.of(lot, prices);
        });
  }

  private static boolean hasPieces(Lot lot) {
    return lot.portions().stream().anyMatch(portion -> !portion.pieces().isEmpty());
  }

  private List<Option> cut(Lot lot) {
    CutOptions.Result result = CutOptions.of(lot, prices, planner);
    if (!result.failures().isEmpty()) {
      Job job = lot.jobs().get(0);
      problems.add(
          new Problem(
              job.place(),
              job.code(),
              lot.key() + " cannot be cut: " + String.join("; ", result.failures()),
              "a Stock length that holds the longest piece",
              Problem.Effect.NOTE));
    }
    return result.options();
  }
}
