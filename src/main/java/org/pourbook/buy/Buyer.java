package org.pourbook.buy;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.cut.CutPlanner;
import org.pourbook.job.Job;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.PieceNeed;
import org.pourbook.takeoff.TakeOff;

/** Needs turned into orders, loads and money. */
public final class Buyer {

  private final PriceBook prices;
  private final CutPlanner planner;
  private final List<OnHand> onHand;
  private final int after;
  private final List<Problem> problems = new ArrayList<>();

  private Buyer(PriceBook prices, CutPlanner planner, List<OnHand> onHand, int after) {
    this.prices = prices;
    this.planner = planner;
    this.onHand = onHand;
    this.after = after;
  }

  /** Returns how many pieces of boards and bars jobs ask for, those of their extras among them. */
  public static int piecesAsked(List<TakeOff> takeOffs, PriceBook prices) {
    return Lots.of(takeOffs, prices).stream()
        .flatMap(lot -> lot.portions().stream())
        .flatMap(portion -> portion.pieces().stream())
        .mapToInt(PieceNeed::count)
        .reduce(0, Math::addExact);
  }

  /**
   * Returns what is bought for the jobs. Whatever cannot be cut or priced is listed without a
   * price; nothing is left out.
   */
  public static Bought buy(List<TakeOff> takeOffs, PriceBook prices, CutPlanner planner) {
    return buy(takeOffs, prices, planner, List.of());
  }

  /**
   * Returns what is bought where some boards and bars are there already: they are cut first, for
   * the lots in the order in which these need them.
   */
  public static Bought buy(
      List<TakeOff> takeOffs, PriceBook prices, CutPlanner planner, List<OnHand> onHand) {
    return new Buyer(prices, planner, onHand, 0).buy(takeOffs);
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
    Buyer buyer = new Buyer(prices, planner, List.of(), after);
    List<Choice> choices = new ArrayList<>(settled);
    choices.addAll(buyer.choices(open));
    return new Met(buyer.bought(takeOffs, choices, Alone.NOBODY), List.copyOf(choices));
  }

  private Bought buy(List<TakeOff> takeOffs) {
    return bought(
        takeOffs,
        choices(TiedRuns.settled(Lots.of(takeOffs, prices), prices, planner, onHand)),
        new Alone(onHand, (lot, there) -> Choosing.ways(lot, prices, planner, there).options()));
  }

  private List<Choice> choices(List<Lot> lots) {
    List<Choosing.Settled> settled = Choosing.of(lots, prices, planner, onHand);
    settled.forEach(lot -> lot.problem().ifPresent(problems::add));
    return settled.stream().map(Choosing.Settled::choice).toList();
  }

  /**
   * Returns the orders that choices make.
   *
   * @param alone how one job would buy its part of a lot, for what sharing saves
   */
  private Bought bought(List<TakeOff> takeOffs, List<Choice> choices, Alone alone) {
    List<Job> jobs = takeOffs.stream().map(TakeOff::job).toList();
    List<OrderDraft> drafts = OrderDrafts.of(choices);
    List<Line> lines = JobLines.of(jobs, choices, drafts, after);
    Loads.Result loads = Loads.of(takeOffs, choices);
    List<Bought.BuyCaution> cautions = new ArrayList<>(BuyCautions.of(choices));
    cautions.addAll(DeliveryCautions.of(drafts));
    cautions.addAll(loads.cautions());
    return new Bought(
        lines,
        Orders.of(drafts, after, alone),
        loads.loads(),
        CutSheets.of(choices),
        Yard.after(onHand, choices),
        JobMoney.of(jobs, lines, drafts),
        cautions,
        problems);
  }
}
