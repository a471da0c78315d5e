package org.pourbook.buy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
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

/**
 * The ways to meet lots, and which is taken. Lots that bear on one another are settled together,
 * the others in parallel: of each only the way that is taken stays in memory. What is settled is
 * listed in the lots' order, so that the number of cores changes nothing.
 */
final class Choosing {

  private final List<Lot> lots;
  private final PriceBook prices;
  private final CutPlanner planner;
  private final List<OnHand> onHand;

  private Choosing(List<Lot> lots, PriceBook prices, CutPlanner planner, List<OnHand> onHand) {
    this.lots = lots;
    this.prices = prices;
    this.planner = planner;
    this.onHand = onHand;
  }

  /** A lot's choice, and what is told where it cannot be cut. */
  record Settled(Choice choice, Optional<Problem> problem) {}

  /**
   * Returns how each lot is met, in their order.
   *
   * @param onHand boards and bars that are there already, cut first
   */
  static List<Settled> of(
      List<Lot> lots, PriceBook prices, CutPlanner planner, List<OnHand> onHand) {
    Choosing choosing = new Choosing(lots, prices, planner, onHand);
    Map<Integer, Settled> settled = new ConcurrentHashMap<>();
    choosing.apart().parallelStream().forEach(group -> settled.putAll(choosing.settled(group)));
    return IntStream.range(0, lots.size()).mapToObj(settled::get).toList();
  }

  /** Returns groups of lots of which none shares a delivery or stock on hand with another's. */
  private List<List<Integer>> apart() {
    DisjointSets joined = new DisjointSets(lots.size());
    for (int i = 0; i < lots.size(); i++) {
      for (Delivery delivery : lots.get(i).deliveries()) {
        joined.joinBy(delivery, i);
      }
      MaterialKey key = lots.get(i).key().normal();
      if (!Yard.of(onHand, key).isEmpty()) {
        joined.joinBy(key, i);
      }
    }
    return joined.groups();
  }

  private Map<Integer, Settled> settled(List<Integer> group) {
    List<CutOptions.Result> ways = ways(group);
    List<Offered> offered = new ArrayList<>();
    for (int i = 0; i < group.size(); i++) {
      offered.add(offered(lots.get(group.get(i)), ways.get(i)));
    }
    List<Choice> choices = CheapestTotal.choose(offered);
    Map<Integer, Settled> settled = new HashMap<>();
    for (int i = 0; i < group.size(); i++) {
      Choice choice = choices.get(i);
      settled.put(group.get(i), new Settled(choice, notCut(choice.lot(), ways.get(i))));
    }
    return settled;
  }

  private static Offered offered(Lot lot, CutOptions.Result ways) {
    List<Option> bound =
        ways.options().stream()
            .filter(option -> option.supplier().map(Supplier::name).equals(lot.onlyFrom()))
            .toList();
    return new Offered(lot, bound.isEmpty() ? ways.options() : bound);
  }

  private List<CutOptions.Result> ways(List<Integer> group) {
    Map<Object, List<Integer>> sharing = new LinkedHashMap<>();
    for (int i : group) {
      MaterialKey key = lots.get(i).key().normal();
      sharing
          .computeIfAbsent(Yard.of(onHand, key).isEmpty() ? i : key, k -> new ArrayList<>())
          .add(i);
    }
    Map<Integer, CutOptions.Result> ways = new ConcurrentHashMap<>();
    sharing.values().parallelStream().forEach(some -> ways.putAll(waysSharing(some)));
    return group.stream().map(ways::get).toList();
  }

  /** Returns the ways to meet lots that share what is on hand, by their index. */
  private Map<Integer, CutOptions.Result> waysSharing(List<Integer> group) {
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

  /**
   * Returns the ways to meet a lot from the prices, and why it cannot be cut where that is so.
   *
   * @param there stock on hand, cut first
   */
  static CutOptions.Result ways(Lot lot, PriceBook prices, CutPlanner planner, List<OnHand> there) {
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
