package org.pourbook.buy;

import org.pourbook.measure.Length;
import org.pourbook.measure.UnitSystem;
import org.pourbook.takeoff.MaterialKey;

/**
 * Boards or bars that are there already, to be cut before anything is bought; and what a cut plan
 * leaves for the yard.
 *
 * @param units in which the length is read
 * @param from whose offcut it is, in words
 */
public record OnHand(MaterialKey key, UnitSystem units, Length length, int pieces, String from) {
  public OnHand {
    if (!length.isPositive() || pieces <= 0) {
      throw new IllegalArgumentException("stock on hand has a length and pieces: " + key);
    }
  }

  OnHand withPieces(int other) {
    return new OnHand(key, units, length, other, from);
  }
}
