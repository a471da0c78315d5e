package org.pourbook.takeoff;

import java.util.List;
import java.util.Optional;
import org.pourbook.job.Setting;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.BarMark.BarShape;
import org.pourbook.takeoff.rule.BarLaps;

/** Pieces to cut and bar marks of one section or joint. */
final class BarPieces {
  private final SteelJob steel;
  private final String code;
  private final int pour;
  private int marks;

  BarPieces(SteelJob steel, String code, int pour) {
    this.steel = steel;
    this.code = code;
    this.pour = pour;
  }

  /** Returns the longest stock of a bar, the usual one where none on offer is longer than a lap. */
  Length stock(BarSize bar, Length lap) {
    Length usual = BarLaps.usualStock(bar);
    Length stock = steel.onOffer().longestStock(Material.BAR.of(bar.designation())).orElse(usual);
    if (stock.isMoreThan(lap)) {
      return stock;
    }
    String says =
        bar
            + " is offered no longer than its lap of "
            + steel.small(lap)
            + ": laps are for bars of "
            + steel.show(usual.max(lap.times(2)));
    steel.caution(code, says + ".", "BAR-2");
    return usual.max(lap.times(2));
  }

  /** Adds the pieces of like runs: full lengths first, the rest last (BAR-2). */
  void run(BarSize bar, Length run, Length lap, Length stock, int count, String goesTo) {
    int laps = BarLaps.lapsIn(run, lap, stock);
    Length last = BarLaps.lastPiece(run, lap, stock);
    if (laps == 0) {
      cut(bar, last, count, goesTo, "");
      return;
    }
    Length shortest = BarLaps.shortestPiece(lap, steel.setting(Setting.SHORTEST_BAR)).min(last);
    Optional<Joined> joined = Optional.of(new Joined(run, laps, lap, shortest, stock, 1));
    cut(bar, stock, laps * count, goesTo, "", joined);
    cut(bar, last, count, goesTo, "", joined);
  }

  void cut(BarSize bar, Length length, int count, String goesTo, String mark) {
    cut(bar, length, count, goesTo, mark, Optional.empty());
  }

  private void cut(
      BarSize bar, Length length, int count, String goesTo, String mark, Optional<Joined> joined) {
    MaterialKey key = Material.BAR.of(bar.designation());
    steel.part().add(new PieceNeed(key, length, count, code + " " + goesTo, mark, pour, joined));
  }

  /** Adds the mark of straight bars: as long as their run in place, cut with their laps. */
  void straight(BarSize bar, int count, Length run, Length cut, int laps) {
    Optional<Length> none = Optional.empty();
    BarShape shape = BarShape.STRAIGHT;
    steel.part().add(new BarMark(code, next(), bar, shape, count, cut, run, none, none, laps));
  }

  /** Adds the mark of bent bars and returns its name. */
  String bent(BarSize bar, BarShape shape, int count, Length cut, List<Length> legs) {
    String name = next();
    Optional<Length> second = legs.stream().skip(1).findFirst();
    Optional<Length> third = legs.stream().skip(2).findFirst();
    steel
        .part()
        .add(new BarMark(code, name, bar, shape, count, cut, legs.get(0), second, third, 0));
    return name;
  }

  private String next() {
    marks++;
    return code + "-" + marks;
  }
}
