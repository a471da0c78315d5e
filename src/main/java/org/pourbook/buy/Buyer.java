package org.pourbook.buy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.pourbook.cut.CutPlanner;
import org.pourbook.job.Job;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.MaterialKey;
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

  /**
   * Returns what is bought for the jobs. Whatever cannot be cut or priced is listed without a
   * price; nothing is left out. The ways to meet each lot are worked out in parallel, and taken in
   * the lots' order, so that the number of cores changes nothing.
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
    choices.addAll(CheapestTotal.choose(buyer.offered(open)));
    return new Met(buyer.bought(takeOffs, choices, Alone.NOBODY), List.copyOf(choices));
  }

  private Bought buy(List<TakeOff> takeOffs) {
    return bought(
        takeOffs,
        CheapestTotal.choose(
            offered(TiedRuns.settled(Lots.of(takeOffs, prices), prices, planner, onHand))),
        new Alone(onHand, (lot, there) -> ways(lot, prices, planner, there).options()));
  }

  private List<Offered> offered(List<Lot> lots) {
    List<CutOptions.Result> ways = ways(lots);
    List<Offered> offered = new ArrayList<>();
    for (int i = 0; i < lots.size(); i++) {
      offered.add(offered(lots.get(i), ways.get(i)));
    }
    return offered;
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

  private List<CutOptions.Result> ways(List<Lot> lots) {
    Map<Object, List<Integer>> groups = new LinkedHashMap<>();
    for (int i = 0; i < lots.size(); i++) {
      MaterialKey key = lots.get(i).key().normal();
      groups
          .computeIfAbsent(Yard.of(onHand, key).isEmpty() ? i : key, k -> new ArrayList<>())
          .add(i);
    }
    Map<Integer, CutOptions.Result> ways = new ConcurrentHashMap<>();
    groups.values().parallelStream().forEach(group -> ways.putAll(ways(lots, group)));
    return IntStream.range(0, lots.size()).mapToObj(ways::get).toList();
  }

  /** Returns the ways to meet lots that share what is on hand, by their index. */
  private Map<Integer, CutOptions.Result> ways(List<Lot> lots, List<Integer> group) {
    Map<Integer, CutOptions.Result> ways = new LinkedHashMap<>();
    List<OnHand> left = Yard.of(onHand, lots.get(group.get(0)).key());
    List<Integer> first =
        group.stream()
            .sorted(
                Comparator.comparing((Integer i) -> lots.get(i).deliveries().get(0))
                    .thenComparing(i -> lots.get(i).jobs().get(0).code()))
            .toList();
    for (int i : first) {
      CutOptions.Result result = ways(lots.get(i), prices, planner, left);
      ways.put(i, result);
      left = Yard.without(left, result.options());
    }
    return ways;
  }

  private Offered offered(Lot lot, CutOptions.Result ways) {
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
    return ways(lot, prices, planner, List.of());
  }

  private static CutOptions.Result ways(
      Lot lot, PriceBook prices, CutPlanner planner, List<OnHand> there) {
    return switch (lot.planning()) {
      case CUT ->
          lot.hasPieces()
              ? CutOptions.of(lot, prices, planner, there)
              : sure(CountedOptions.of(lot, prices));
      case COUNTED, STRIPS, SERVICE -> sure(CountedOptions.of(lot, prices));
      case BY_POUR -> sure(ConcreteOptions.of(lot, prices));
    };
  }

  private static CutOptions.Result sure(List<Option> options) {
    return new CutOptions.Result(options, List.of());
  }
}
