package org.pourbook.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.pourbook.job.Setting;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.BarMark.BarShape;
import org.pourbook.takeoff.rule.BarBends;
import org.pourbook.takeoff.rule.BarLaps;
import org.pourbook.takeoff.rule.BarWeights;
import org.pourbook.takeoff.rule.TieWire;

/**
 * The bars of one section or joint, gathered: for each kind of bar its quantity, the pieces to cut
 * and its mark; at the end the ties and weights of all.
 */
final class BarsOf {
  private final SteelJob steel;
  private final String code;
  private final int pour;
  private final int times;
  private final BarPieces pieces;
  private final Map<BarSize, Length> lengths = new LinkedHashMap<>();
  private long ties;

  /**
   * @param times how many there are of the section; everything added is for one
   */
  BarsOf(SteelJob steel, String code, int pour, int times) {
    this.steel = steel;
    this.code = code;
    this.pour = pour;
    this.times = times;
    this.pieces = new BarPieces(steel, code, pour);
  }

  /** What a kind of bar is called, its rule, and where the crew puts it. */
  record Role(String what, String rule, String goesTo) {}

  /** Adds straight bars, lapped where longer than the longest stock on offer. */
  void straight(Role role, BarSize bar, List<Runs> runs, Length lap) {
    List<Runs> laid = runs.stream().filter(run -> run.run().isPositive()).toList();
    if (laid.isEmpty()) {
      return;
    }
    Length stock = pieces.stock(bar, lap);
    Length net = Length.ZERO;
    int laps = 0;
    for (Runs run : laid) {
      int inRun = BarLaps.lapsIn(run.run(), lap, stock);
      int count = run.count() * times;
      net = net.plus(run.run().times(count));
      laps += inRun * count;
      pieces.run(bar, run.run(), lap, stock, count, role.goesTo());
      pieces.straight(bar, count, run.run(), run.run().plus(lap.times(inRun)), inRun);
    }
    add(role, bar, net, worked(laid));
    if (laps > 0) {
      Role lapped = new Role("laps of " + role.what(), "BAR-2", role.goesTo());
      add(lapped, bar, lap.times(laps), laps + " laps × " + steel.small(lap));
      ties += TieWire.atLaps(laps) / times;
    }
  }

  /** Adds bent bars of equal shape; the legs are measured outside. */
  void bent(Role role, BarSize bar, BarShape shape, int count, List<Length> legs) {
    if (count == 0) {
      return;
    }
    Length sum = legs.stream().reduce(Length.ZERO, Length::plus);
    Length cut = BarBends.cutLength(sum, legs.size() - 1, bar);
    String mark = pieces.bent(bar, shape, count * times, cut, legs);
    pieces.cut(bar, cut, count * times, role.goesTo(), mark);
    add(role, bar, cut.times((long) count * times), worked(List.of(new Runs(cut, count))));
  }

  /** Adds ties of one section. */
  void tie(long more) {
    ties += more;
  }

  /** Adds a counted material of one section. */
  void counted(
      String what, Material material, String size, int count, String working, String rule) {
    if (count > 0) {
      double amount = (double) count * times;
      String says = working + timesText() + SteelJob.equal(amount, Unit.EACH);
      steel
          .part()
          .add(Quantity.of(code, what, amount, Unit.EACH, says, rule, material.of(size), pour));
    }
  }

  /** Adds the weights and the tie wire of everything added before. */
  void finish() {
    Unit mass = steel.units().isMetric() ? Unit.KG : Unit.LB;
    lengths.forEach((bar, length) -> weigh(bar, length, mass));
    if (ties > 0) {
      Length tie = steel.setting(Setting.TIE_LENGTH);
      double amount = mass.fromBase(TieWire.massKg(ties * times, tie));
      String working =
          ties
              + " ties"
              + timesText()
              + " × "
              + steel.small(tie)
              + " × "
              + perLength(TieWire.massKg(1, Length.ofMillimetres(1000)), 4)
              + SteelJob.equal(amount, mass);
      MaterialKey wire = Material.TIE_WIRE.of("16 ga");
      steel.part().add(Quantity.of(code, "tie wire", amount, mass, working, "BAR-8", wire, pour));
    }
  }

  private void weigh(BarSize bar, Length length, Unit mass) {
    double amount = mass.fromBase(BarWeights.massKg(bar, length));
    String working =
        Working.number(own(length))
            + " "
            + ownUnit().label()
            + " × "
            + perLength(bar.massKgPerM(), 3)
            + SteelJob.equal(amount, mass);
    String what = "weight of " + bar + " bars";
    steel.part().add(Quantity.told(code, what, amount, mass, working, "BAR-6", pour));
  }

  /** A mass a metre as tables print it: {@code 0.668 lb/ft}. */
  private String perLength(double kgPerM, int places) {
    Unit mass = steel.units().isMetric() ? Unit.KG : Unit.LB;
    BigDecimal each = BigDecimal.valueOf(mass.fromBase(ownUnit().toBase(kgPerM)));
    return each.setScale(places, RoundingMode.HALF_UP)
        + " "
        + mass.label()
        + "/"
        + ownUnit().label();
  }

  private void add(Role role, BarSize bar, Length length, String working) {
    double amount = own(length);
    lengths.merge(bar, length, Length::plus);
    steel
        .part()
        .add(
            Quantity.of(
                code,
                role.what(),
                amount,
                ownUnit(),
                working + SteelJob.equal(amount, ownUnit()),
                role.rule(),
                Material.BAR.of(bar.designation()),
                pour));
  }

  private String worked(List<Runs> runs) {
    if (runs.size() > 4) {
      int bars = runs.stream().mapToInt(Runs::count).sum();
      Length longest = runs.get(0).run();
      Length shortest = runs.get(runs.size() - 1).run();
      return bars + " bars, " + steel.show(longest) + " to " + steel.show(shortest) + timesText();
    }
    String sum =
        runs.stream()
            .map(run -> run.count() + " × " + steel.show(run.run()))
            .collect(Collectors.joining(" + "));
    return times > 1 && runs.size() > 1 ? "(" + sum + ")" + timesText() : sum + timesText();
  }

  private String timesText() {
    return steel.working().times(times);
  }

  private Unit ownUnit() {
    return Material.BAR.unit(steel.units());
  }

  private double own(Length length) {
    return steel.units().isMetric() ? length.metres() : length.feet();
  }
}
