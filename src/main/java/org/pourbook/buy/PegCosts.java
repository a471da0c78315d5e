package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.pourbook.cut.CutJob;
import org.pourbook.cut.CutPlanner;
import org.pourbook.measure.Length;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.PieceNeed;
import org.pourbook.takeoff.TakeOff;

/**
 * What stakes or braces cost with the boards that come with them, goods alone.
 *
 * @param lot the pegs, as take-off would buy them
 * @param board that they may be cut from
 * @param onHand boards of that size that are there already
 */
record PegCosts(
    Lot lot, MaterialKey board, PriceBook prices, CutPlanner planner, List<OnHand> onHand) {

  /** What boards and pegs cost together, and what these boards cost at least. */
  record Cost(Money goods, Money leastBoards) {}

  /** Returns where a lot goes whole: what comes together may be cut from one plan. */
  static Object place(Lot lot) {
    Delivery first = lot.deliveries().get(0);
    return first.isShared() ? first : lot.jobs().get(0).code();
  }

  /** Returns what boards and pegs of take-offs cost; empty where the boards have no price. */
  Optional<Cost> of(List<TakeOff> takeOffs) {
    List<Lot> lots = Lots.of(takeOffs, prices);
    Optional<Lot> boards = find(lots, board);
    if (boards.isEmpty()) {
      return Optional.empty();
    }
    List<Option> ways = CutOptions.of(boards.get(), prices, planner, onHand).options();
    Money bound =
        ways.stream()
            .flatMap(way -> way.plan().stream())
            .map(plan -> Money.rounded(BigDecimal.valueOf(plan.boundMicros(), 6)))
            .min(Comparator.naturalOrder())
            .orElse(Money.ZERO);
    Money pegs =
        find(lots, lot.key())
            .flatMap(left -> least(CountedOptions.of(left, prices)))
            .orElse(Money.ZERO);
    return least(ways).map(goods -> new Cost(goods.plus(pegs), bound));
  }

  private Optional<Lot> find(List<Lot> lots, MaterialKey key) {
    return lots.stream()
        .filter(other -> other.key().normal().equals(key.normal()))
        .filter(other -> place(other).equals(place(lot)))
        .findFirst();
  }

  private static Optional<Money> least(List<Option> options) {
    return Option.cheapest(options).map(Option::goods);
  }

  /** Returns what is paid for pegs where so many of the lot are not bought. */
  Money bought(int cut) {
    double share = Math.max(0, (lot.net() - cut) / lot.net());
    List<Portion> left = new ArrayList<>();
    lot.portions().forEach(portion -> left.add(portion.ordered(0, portion.needed() * share)));
    return least(CountedOptions.of(lot.withPortions(left), prices)).orElse(Money.ZERO);
  }

  /** Returns the length of boards that take-offs need. */
  double boardsM(List<TakeOff> takeOffs) {
    return find(Lots.of(takeOffs, prices), board).map(Lot::needed).orElse(0.0);
  }

  /** Returns what so much of the board costs at least; what is on hand costs nothing. */
  Money byLength(double metres) {
    return prices
        .leastPrice(board)
        .filter(perMetre -> onHand.isEmpty())
        .map(perMetre -> Money.rounded(perMetre.multiply(BigDecimal.valueOf(metres))))
        .orElse(Money.ZERO);
  }

  /**
   * Returns how many of some pegs would be cut if they were sold one by one, at what one of the lot
   * costs: then one plan decides it, with each peg as stock of just its own length.
   *
   * @param takeOffs in which all of them are cut
   * @param pegs as pieces of these take-offs
   */
  int likely(List<TakeOff> takeOffs, Collection<PieceNeed> pegs) {
    long micros = Math.round(bought(0).amount().doubleValue() / lot.net() * 1e6);
    Set<Length> lengths = new TreeSet<>();
    pegs.forEach(peg -> lengths.add(peg.length()));
    List<CutJob.Stock> single = new ArrayList<>();
    for (Length length : lengths) {
      single.add(new CutJob.Stock("peg " + length, length, micros, Integer.MAX_VALUE));
    }
    Set<PieceNeed> meant = new HashSet<>(pegs);
    return find(Lots.of(takeOffs, prices), board)
        .map(
            boards ->
                CutOptions.cutRatherThanBought(
                    boards, prices, planner, onHand, single, meant::contains))
        .orElse(0);
  }
}
