package org.pourbook.takeoff.rule;

import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** BAR-2: how a run longer than the longest stock bar is lapped. */
public final class BarLaps {

  private BarLaps() {}

  /** Returns a lap as a crew measures it: up to the whole inch, of a metric bar up to 10 mm. */
  @Source(
      rule = "BAR-2",
      says = "A lap is rounded up to the whole inch, of a metric bar size to 10 mm.",
      value = "1 in; 10 mm",
      standing = Standing.COMMON_PRACTICE)
  public static Length roundedUp(Length lap, BarSize bar) {
    return lap.roundedUpTo(bar.isInchPound() ? Length.ofInches(1) : Length.ofMillimetres(10));
  }

  /**
   * Returns how many laps a run has: {@code ⌈(run − lap)/(stock − lap)⌉ − 1}, exactly; none where
   * one bar reaches.
   *
   * @throws IllegalArgumentException if the stock is no longer than the lap
   */
  @Source(
      rule = "BAR-2",
      says =
          "Laps in a run: (run − lap) ÷ (longest stock − lap), rounded up, less one; full bars"
              + " first, the rest last, ends alternating from bar to bar.",
      standing = Standing.COMMON_PRACTICE)
  public static int lapsIn(Length run, Length lap, Length stock) {
    if (run.compareTo(stock) <= 0) {
      return 0;
    }
    return run.minus(lap).ceilDiv(stock.minus(lap)) - 1;
  }

  /** Returns the last piece of a lapped run, behind its full bars: longer than the lap. */
  @Source(
      rule = "BAR-2",
      says = "The last bar of a run is the run and its laps less the full bars.",
      standing = Standing.COMMON_PRACTICE)
  public static Length lastPiece(Length run, Length lap, Length stock) {
    return run.minus(stock.minus(lap).times(lapsIn(run, lap, stock)));
  }

  /**
   * Returns the shortest piece of a lapped run whose laps do not lie where full lengths first put
   * them: a piece between two laps holds both, and it is no shorter than the shortest bar.
   */
  @Source(
      rule = "BAR-2",
      says =
          "The cut plan may lap a run elsewhere, as often: no piece is under two laps or the"
              + " Shortest bar, unless full lengths first leave a shorter one.",
      value = "2 laps",
      standing = Standing.COMMON_PRACTICE)
  public static Length shortestPiece(Length lap, Length shortestBar) {
    return lap.times(2).max(shortestBar);
  }

  /** Returns the stock length taken where none is on offer: 20 ft, of metric bar sizes 6 m. */
  @Source(
      rule = "BAR-2",
      says = "Where no stock length is on offer a bar comes in the shortest mill length.",
      value = "20 ft; 6 m",
      standing = Standing.FROM_MEMORY)
  public static Length usualStock(BarSize bar) {
    return bar.isInchPound() ? Length.ofFeet(20) : Length.ofMillimetres(6000);
  }
}
