package org.pourbook.buy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.pourbook.cut.CutPlanner;
import org.pourbook.job.Job;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.TakeOff;

/** Needs turned into orders, loads and money. */
public final class Buyer {

  private final PriceBook prices;
  private final CutPlanner planner;
  private final int after;
  private final List<Problem> problems = new ArrayList<>();

  private Buyer(PriceBook prices, CutPlanner planner, int after) {
    this.prices = prices;
    this.planner = planner;
    this.after = after;
  }

  /**
   * Returns what is bought for the jobs. Whatever cannot be cut or priced is listed without a
   * price; nothing is left out.
   */
  public static Bought buy(List<TakeOff> takeOffs, PriceBook prices, CutPlanner planner) {
    return new Buyer(prices, planner, 0).buy(takeOffs);
  }

  /** What was bought, and how each lot was met. */
  record Met(Bought bought, List<Choice> choices) {}

  /**
   * Returns what is bought beside an earlier order.
   *
   * @param settled lots that what the earlier order brings meets whole
   * @param open what is left to buy
   * @param after how many orders were numbered before
   */
  static Met besides(
      List<TakeOff> takeOffs,
      List<Choice> settled,
      List<Lot> open,
      PriceBook prices,
      CutPlanner planner,
      int after) {
    Buyer buyer = new Buyer(prices, planner, after);
    List<Choice> choices = new ArrayList<>(settled);
    choices.addAll(CheapestTotal.choose(open.stream().map(buyer::offered).toList()));
    return new Met(buyer.bought(takeOffs, choices, lot -> List.of()), List.copyOf(choices));
  }

  private Bought buy(List<TakeOff> takeOffs) {
    List<Offered> offered = Lots.of(takeOffs, prices).stream().map(this::offered).toList();
    return bought(
        takeOffs, CheapestTotal.choose(offered), lot -> ways(lot, prices, planner).options());
  }

  /**
   * Returns the orders that choices make.
   *
   * @param alone the ways to meet one job's part of a lot, for what sharing saves
   */
  private Bought bought(
      List<TakeOff> takeOffs, List<Choice> choices, Function<Lot, List<Option>> alone) {
    List<Job> jobs = takeOffs.stream().map(TakeOff::job).toList();
    List<OrderDraft> drafts = OrderDrafts.of(choices);
    List<Line> lines = JobLines.of(jobs, choices, drafts, after);
    Loads.Result loads = Loads.of(takeOffs, choices);
    List<Bought.BuyCaution> cautions = new ArrayList<>(BuyCautions.of(choices));
    cautions.addAll(loads.cautions());
    return new Bought(
        lines,
        Orders.of(drafts, after, alone),
        loads.loads(),
        CutSheets.of(choices),
        JobMoney.of(jobs, lines, drafts),
        cautions,
        problems);
  }

  private Offered offered(Lot lot) {
    CutOptions.Result ways = ways(lot, prices, planner);
    notCut(lot, ways).ifPresent(problems::add);
    List<Option> bound =
        ways.options().stream()
            .filter(option -> option.supplier().map(Supplier::name).equals(lot.onlyFrom()))
            .toList();
    return new Offered(lot, bound.isEmpty() ? ways.options() : bound);
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
