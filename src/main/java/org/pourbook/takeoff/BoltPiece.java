package org.pourbook.takeoff;

import java.util.List;
import org.pourbook.measure.BoltSize;
import org.pourbook.measure.Length;

/**
 * A plate piece with its bolts: a row of the Bolts sheet.
 *
 * @param piece number of the piece within the wall, from 1
 * @param count how many like it (the plate's count)
 * @param bolts of all {@code count}
 * @param positions from the left end, of one piece
 */
public record BoltPiece(
    String plate,
    int piece,
    int count,
    Length length,
    int bolts,
    List<Length> positions,
    BoltSize bolt,
    Length embedment) {
  public BoltPiece {
    positions = List.copyOf(positions);
  }
}
