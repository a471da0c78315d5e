package org.pourbook.buy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pourbook.measure.Length;

/**
 * A length of stock to cut from.
 *
 * @param offer empty: no price
 * @param piecesPerUnit pieces of this length in one order unit; a fraction where the order unit is
 *     a measure
 * @param byMeasure sold by measure, not by whole order units
 * @param onHand there already: free, and no more of it than there is
 */
record CutStock(
    Optional<Offer> offer,
    Length length,
    double piecesPerUnit,
    boolean byMeasure,
    Optional<OnHand> onHand) {

  /** Returns the lengths in which an offer comes. */
  static List<CutStock> of(Offer offer, Lot lot, List<Length> usual) {
    Price price = offer.first();
    boolean measured = OrderUnits.measured(price, lot.key(), lot.unit()).isPresent();
    double held = OrderUnits.held(price, lot.key(), lot.unit());
    List<CutStock> stock = new ArrayList<>();
    for (Length length : StockLengths.of(price, lot.key(), lot.unit(), usual)) {
      stock.add(
          new CutStock(
              Optional.of(offer), length, held / length.metres(), measured, Optional.empty()));
    }
    return stock;
  }

  static List<CutStock> unpriced(List<Length> lengths) {
    return lengths.stream()
        .map(length -> new CutStock(Optional.empty(), length, 1, false, Optional.empty()))
        .toList();
  }

  static CutStock of(OnHand there) {
    return new CutStock(Optional.empty(), there.length(), 1, false, Optional.of(there));
  }

  /**
   * Returns how many pieces there are.
   *
   * @param inStockOnly whether a supplier's stock counts; what is on hand always does
   */
  int limit(boolean inStockOnly) {
    return onHand.map(OnHand::pieces).orElse(inStockOnly ? inStock() : Integer.MAX_VALUE);
  }

  private int inStock() {
    return offer
        .map(Offer::first)
        .filter(price -> price.inStock().isPresent())
        .map(price -> Packs.down(price.inStock().getAsInt() * piecesPerUnit, 1).intValue())
        .orElse(Integer.MAX_VALUE);
  }

  /** Returns the price of a piece before any quantity is reached; 0 without a price. */
  long costMicros() {
    return offer
        .map(
            known ->
                known
                    .first()
                    .price()
                    .movePointRight(6)
                    .divide(Packs.exact(piecesPerUnit), 0, RoundingMode.HALF_UP)
                    .longValueExact())
        .orElse(0L);
  }

  /** Returns the order units for so many pieces: whole ones unless sold by measure. */
  BigDecimal orderUnits(int pieces) {
    return byMeasure ? Packs.ratio(pieces, piecesPerUnit) : Packs.up(pieces, piecesPerUnit);
  }
}
