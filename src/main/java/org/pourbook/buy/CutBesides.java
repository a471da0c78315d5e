package org.pourbook.buy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.cut.CutPlanner;
import org.pourbook.cut.CutResult;
import org.pourbook.measure.Length;

/** Boards and bars: stock in hand is cut first, then new stock is opened. */
final class CutBesides {

  private final Pool pool;
  private final List<StockInHand> stock = new ArrayList<>();
  private final List<Choice> settled = new ArrayList<>();
  private final List<Lot> open = new ArrayList<>();
  private int[] left;

  private CutBesides(Pool pool, PriceBook prices, CutPlanner planner) {
    this.pool = pool;
    for (ItemInHand item : pool.items()) {
      lengths(item, prices, planner).forEach((length, pieces) -> add(item, length, pieces));
    }
    this.left = stock.stream().mapToInt(StockInHand::pieces).toArray();
  }

  /**
   * Returns the plans of what stock in hand yields alone, and what is left to plan with bought
   * stock.
   *
   * @param prices of the earlier order
   */
  static CutBesides of(Pool pool, PriceBook prices, CutPlanner planner) {
    CutBesides cut = new CutBesides(pool, prices, planner);
    for (Lot lot : pool.now()) {
      cut.plan(lot, planner);
    }
    return cut;
  }

  List<Choice> settled() {
    return settled;
  }

  List<Lot> open() {
    return open;
  }

  /** Has what is left to buy brought together. */
  void bring(OneDay day) {
    open.replaceAll(day::of);
  }

  private void add(ItemInHand item, Length length, int pieces) {
    long micros = Math.round(item.perBaseUnit() * length.metres() * 1e6);
    if (pieces > 0) {
      stock.add(new StockInHand(item, length, pieces, micros));
    }
  }

  /** Returns the lengths in which an item comes, with how many pieces there are. */
  private Map<Length, Integer> lengths(ItemInHand item, PriceBook prices, CutPlanner planner) {
    double metres = item.packs().doubleValue() * item.held();
    Optional<Price> row =
        prices.answering(item.first().key()).stream()
            .filter(price -> price.supplier().equals(item.first().supplier()))
            .filter(price -> price.item().equals(item.first().item()))
            .findFirst();
    OwnUnit own = OwnUnit.written(item.first().unit());
    boolean measured =
        row.filter(price -> price.stockLength().isEmpty())
            .filter(price -> OrderUnits.measured(price, item.first().key(), own).isPresent())
            .isPresent();
    if (measured) {
      return asPlanned(item, prices, planner);
    }
    Length one = row.flatMap(Price::stockLength).orElseGet(() -> Length.ofMetres(item.held()));
    return one.isPositive()
        ? Map.of(one, Packs.down(metres, one.metres()).intValueExact())
        : Map.of();
  }

  /** What is sold by measure came in the lengths that the earlier plan opened. */
  private Map<Length, Integer> asPlanned(ItemInHand item, PriceBook prices, CutPlanner planner) {
    Map<Length, Integer> pieces = new LinkedHashMap<>();
    double metres = item.packs().doubleValue() * item.held();
    for (Lot lot : pool.before()) {
      for (Option option : CutOptions.of(lot, prices, planner, List.of()).options()) {
        if (option.supplier().map(Supplier::name).equals(Optional.of(item.first().supplier()))) {
          for (CutResult.Pattern pattern : option.plan().orElseThrow().patterns()) {
            Length length = pattern.stock().length();
            int times = Math.min(pattern.times(), Packs.down(metres, length.metres()).intValue());
            pieces.merge(length, times, Integer::sum);
            metres -= times * length.metres();
          }
        }
      }
    }
    return pieces;
  }

  private List<StockInHand> stockLeft() {
    List<StockInHand> rest = new ArrayList<>();
    for (int i = 0; i < stock.size(); i++) {
      rest.add(stock.get(i).withPieces(left[i]));
    }
    return rest;
  }

  private void plan(Lot lot, CutPlanner planner) {
    Lot with = lot.withInHand(stockLeft());
    Optional<Option> met = CutOptions.fromHand(with, planner);
    if (met.isEmpty()) {
      open.add(with);
      left = new int[left.length];
      return;
    }
    take(with, met.get().plan().orElseThrow());
    if (!pool.wasNeeded(lot)) {
      settled.add(new Choice(with, met.get()));
    }
  }

  private void take(Lot lot, CutResult.Planned plan) {
    int[] used = StockInHand.used(lot.inHand(), plan);
    for (int i = 0; i < used.length; i++) {
      left[i] = lot.inHand().get(i).pieces() - used[i];
    }
  }

  /** Gives back what no plan cuts, less the spare pieces. */
  void giveBack(List<Choice> choices) {
    for (Choice choice : choices) {
      if (open.contains(choice.lot())) {
        choice.option().plan().ifPresent(plan -> take(choice.lot(), plan));
      }
    }
    int spare = pool.now().stream().mapToInt(CountedOptions::spare).sum();
    List<Integer> longestFirst = new ArrayList<>();
    for (int i = 0; i < left.length; i++) {
      longestFirst.add(i);
    }
    longestFirst.sort(Comparator.comparing((Integer i) -> stock.get(i).length()).reversed());
    for (int i : longestFirst) {
      int kept = Math.min(spare, left[i]);
      left[i] -= kept;
      spare -= kept;
    }
    pool.items().forEach(this::giveBack);
  }

  private void giveBack(ItemInHand item) {
    double metres = 0;
    boolean any = false;
    boolean all = true;
    for (int i = 0; i < left.length; i++) {
      if (stock.get(i).item() == item) {
        metres += left[i] * stock.get(i).length().metres();
        any = true;
        all &= left[i] == stock.get(i).pieces();
      }
    }
    BigDecimal back = Packs.ratio(metres, item.held());
    boolean whole = item.packs().stripTrailingZeros().scale() <= 0;
    if (pool.now().isEmpty() || (any && all)) {
      back = item.packs();
    } else if (whole) {
      back = back.setScale(0, RoundingMode.FLOOR);
    }
    item.giveBack(back);
  }
}
