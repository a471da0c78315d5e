package org.pourbook.buy;

import java.util.List;
import org.pourbook.takeoff.TakeOff;

/**
 * An earlier order: what it was for, and what it brings.
 *
 * @param takeOffs of the jobs as they were
 * @param prices that held then
 * @param inHand rows of its Materials, as the office left them
 * @param left such rows of jobs that are not revised
 * @param lastOrder number of its last order, counted from 1; 0 where none is known
 */
public record Earlier(
    List<TakeOff> takeOffs,
    PriceBook prices,
    List<InHand> inHand,
    List<InHand> left,
    int lastOrder) {
  public Earlier {
    left = List.copyOf(left);
    takeOffs = List.copyOf(takeOffs);
    inHand = List.copyOf(inHand);
  }
}
