package org.pourbook.buy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import org.pourbook.cut.CutPlanner;
import org.pourbook.cut.CutResult;
import org.pourbook.measure.Money;

/**
 * Boards of several sizes that stand one above the other and are butted at the same places
 * (FORM-3): each size has a plan of its own, so that one of them places the joints and the others
 * follow.
 */
final class TiedRuns {

  private final List<Lot> lots;
  private final List<List<OnHand>> onHand;
  private final PriceBook prices;
  private final CutPlanner planner;

  private TiedRuns(
      List<Lot> lots, List<Lot> all, PriceBook prices, CutPlanner planner, List<OnHand> there) {
    this.lots = List.copyOf(lots);
    this.prices = prices;
    this.planner = planner;
    this.onHand = lots.stream().map(lot -> Yard.of(there, lot.key(), all)).toList();
  }

  /** Returns the lots with the joints of tied runs where all sizes together are cheapest. */
  static List<Lot> settled(
      List<Lot> lots, PriceBook prices, CutPlanner planner, List<OnHand> onHand) {
    Map<Object, List<Integer>> byPlace = new LinkedHashMap<>();
    for (int i = 0; i < lots.size(); i++) {
      if (lots.get(i).portions().stream().anyMatch(TiedPieces::isAnyTied)) {
        byPlace.computeIfAbsent(PegCosts.place(lots.get(i)), k -> new ArrayList<>()).add(i);
      }
    }
    Map<Integer, Lot> settled = new ConcurrentHashMap<>();
    byPlace.values().parallelStream()
        .filter(group -> group.size() > 1)
        .forEach(
            group -> {
              List<Lot> tied = group.stream().map(lots::get).toList();
              List<Lot> best = new TiedRuns(tied, lots, prices, planner, onHand).cheapest();
              for (int i = 0; i < best.size(); i++) {
                settled.put(group.get(i), best.get(i));
              }
            });
    return IntStream.range(0, lots.size())
        .mapToObj(i -> settled.getOrDefault(i, lots.get(i)))
        .toList();
  }

  /** Returns the lots with runs that are tied to none, so that each plan places its own joints. */
  static List<Lot> freed(List<Lot> lots) {
    return lots.stream().map(lot -> TiedPieces.in(lot, Map.of(), true)).toList();
  }

  /** Full lengths first stands where no size that leads makes it cheaper. */
  private List<Lot> cheapest() {
    List<Lot> best = lots;
    Optional<Money> least = cost(lots);
    for (int leader = 0; leader < lots.size() && least.isPresent(); leader++) {
      Map<TiedPieces.Run, List<TiedPieces.Division>> divisions = ledBy(leader);
      List<Lot> with = lots.stream().map(lot -> TiedPieces.in(lot, divisions, false)).toList();
      Optional<Money> cost = cost(with);
      if (cost.isPresent() && cost.get().compareTo(least.get()) < 0) {
        least = cost;
        best = with;
      }
    }
    return best;
  }

  /** Returns the joints as one size would have them, and of runs it has not as the next would. */
  private Map<TiedPieces.Run, List<TiedPieces.Division>> ledBy(int leader) {
    Map<TiedPieces.Run, List<TiedPieces.Division>> settled = new HashMap<>();
    for (int i = 0; i < lots.size(); i++) {
      int size = (leader + i) % lots.size();
      Lot lot = lots.get(size);
      Lot free = TiedPieces.in(lot, settled, true);
      List<CutResult.Division> divisions =
          Option.cheapest(CutOptions.of(free, prices, planner, onHand.get(size)).options())
              .flatMap(Option::plan)
              .map(CutResult.Planned::divisions)
              .orElse(List.of());
      settled.putAll(TiedPieces.divisions(lot, settled.keySet(), divisions));
    }
    return settled;
  }

  /** Returns the goods of all sizes; empty where one has no price. */
  private Optional<Money> cost(List<Lot> sizes) {
    Money sum = Money.ZERO;
    for (int i = 0; i < sizes.size(); i++) {
      List<OnHand> there = onHand.get(i);
      Optional<Option> option =
          Option.cheapest(CutOptions.of(sizes.get(i), prices, planner, there).options());
      if (option.isEmpty()) {
        return Optional.empty();
      }
      sum = sum.plus(option.get().goods());
    }
    return Optional.of(sum);
  }
}
