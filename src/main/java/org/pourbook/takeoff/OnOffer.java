package org.pourbook.takeoff;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.pourbook.measure.Length;

/** What take-off must know of the price book: which sizes and stock lengths can be had. */
public interface OnOffer {

  /** Returns the sizes on offer of a material, in the price book's order; may hold empty sizes. */
  List<String> sizes(String material);

  /** Returns the longest stock length on offer of a board or bar. */
  Optional<Length> longestStock(MaterialKey key);

  /**
   * Returns the cheapest price of one metre of board or bar, of one stake, of one base unit of any
   * other material's dimension, tiers aside.
   */
  Optional<BigDecimal> leastPrice(MaterialKey key);

  /** Returns the sheet or roll sizes on offer of a mesh or retarder: length along, then width. */
  List<SheetSize> sheets(MaterialKey key);

  /** Returns whether the price book prices that material in that size. */
  boolean has(MaterialKey key);

  /** A sheet or roll. */
  record SheetSize(Length length, Length width) {}
}
