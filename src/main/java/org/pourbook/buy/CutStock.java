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
 */
record CutStock(Optional<Offer> offer, Length length, double piecesPerUnit, boolean byMeasure) {

  /** Returns the lengths in which an offer comes. */
  static List<CutStock> of(Offer offer, Lot lot, List<Length> usual) {
    Price price = offer.first();
    boolean measured = OrderUnits.measured(price, lot.key(), lot.unit()).isPresent();
    double held = OrderUnits.held(price, lot.key(), lot.unit());
    List<CutStock> stock = new ArrayList<>();
    for (Length length : StockLengths.of(price, lot.key(), lot.unit(), usual)) {
      stock.add(new CutStock(Optional.of(offer), length, held / length.metres(), measured));
    }
    return stock;
  }

  static List<CutStock> unpriced(List<Length> lengths) {
    return lengths.stream()
        .map(length -> new CutStock(Optional.empty(), length, 1, false))
        .toList();
  }

  /** Returns how many pieces are in stock. */
  int limit() {
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
