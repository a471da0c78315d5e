package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.job.BarRun;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.job.Shape;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.outline.FigureSide;
import org.pourbook.outline.Figures;
import org.pourbook.takeoff.BarMark.BarShape;
import org.pourbook.takeoff.BarsOf.Role;
import org.pourbook.takeoff.rule.BarCaps;
import org.pourbook.takeoff.rule.BarMats;
import org.pourbook.takeoff.rule.BarSupports;
import org.pourbook.takeoff.rule.EdgeBars;
import org.pourbook.takeoff.rule.TieWire;

/** Bars along a section's edges, or along it, or upright in it (BAR-3). */
final class EdgeSteel {

  /** A turn of less is no corner but a point on a straight side. */
  private static final double NO_CORNER_DEG = 1;

  private final SteelJob steel;
  private final Section section;
  private final BarRun run;
  private final BarsOf bars;
  private final Length cover;
  private final Length lap;
  private final List<Length> runs = new ArrayList<>();

  EdgeSteel(SteelJob steel, Section section, BarRun run, BarsOf bars) {
    this.steel = steel;
    this.section = section;
    this.run = run;
    this.bars = bars;
    this.cover = steel.setting(Setting.EDGE_COVER);
    this.lap = steel.laps().of(run.size(), section.mix(), BarSupports.blockHeight(steel.units()));
  }

  void add() {
    switch (section.kind()) {
      case PIER -> upright();
      case THICKENING, FOOTING -> {
        alongItself();
        lay(section.kind().label() + " bars", section.kind().label());
      }
      case SLAB, RECESS -> {
        int corners = alongSides();
        lay("edge bars", "edge");
        corners(corners);
      }
    }
  }

  private void upright() {
    Length length = EdgeBars.upright(section.thickness());
    Role role = new Role("pier bars", "BAR-3", "pier, upright");
    bars.straight(role, run.size(), List.of(new Runs(length, run.count())), lap);
    String working = run.count() + " upright bars, one each";
    int caps = BarCaps.over(run.count());
    bars.counted("bar caps", Material.BAR_CAP, "", caps, working, "BAR-9");
  }

  private void alongItself() {
    Shape shape = section.shape();
    if (shape instanceof Shape.Round round) {
      runs.add(EdgeBars.round(round.diameter(), cover, lap));
    } else if (shape instanceof Shape.Rectangle rectangle) {
      runs.add(BarMats.between(rectangle.length(), cover));
    } else {
      runs.add(BarMats.between(Length.ofMetres(Figures.of(section).extentXM()), cover));
      String says = "Its bars are taken along X, as long as the outline: check them.";
      steel.caution(section.code(), says, "BAR-3");
    }
  }

  /** Gathers the runs along the turned-down sides and returns how many corners they share. */
  private int alongSides() {
    if (section.edge().isEmpty()) {
      String says = "Edge bars are written, but no turned-down edge: none counted.";
      steel.caution(section.code(), says, "BAR-3");
      return 0;
    }
    section
        .edge()
        .get()
        .sides()
        .run()
        .ifPresent(length -> runs.add(BarMats.between(length, cover)));
    if (section.shape() instanceof Shape.Round round && section.edge().get().sides().all()) {
      runs.add(EdgeBars.round(round.diameter(), cover, lap));
      return 0;
    }
    return alongStraightSides(Figures.of(section).sides());
  }

  private int alongStraightSides(List<FigureSide> sides) {
    int corners = 0;
    for (int i = 0; i < sides.size(); i++) {
      FigureSide side = sides.get(i);
      if (!side.turnedDown()) {
        continue;
      }
      Length length =
          EdgeBars.alongSide(side.length(), cover, side.startAngleDeg(), side.endAngleDeg());
      if (next(sides, i).turnedDown()) {
        boolean turns = Math.abs(side.endAngleDeg() - 180) >= NO_CORNER_DEG;
        corners += turns ? 1 : 0;
        length = turns ? length : length.plus(lap);
      }
      runs.add(length);
    }
    return corners;
  }

  private static FigureSide next(List<FigureSide> sides, int i) {
    int ring = sides.get(i).ring();
    if (i + 1 < sides.size() && sides.get(i + 1).ring() == ring) {
      return sides.get(i + 1);
    }
    return sides.stream().filter(side -> side.ring() == ring).findFirst().orElseThrow();
  }

  private void lay(String what, String goesTo) {
    List<Length> laid = runs.stream().filter(Length::isPositive).toList();
    List<Runs> like =
        Runs.gathered(laid).stream()
            .map(one -> new Runs(one.run(), one.count() * run.count()))
            .toList();
    bars.straight(new Role(what, "BAR-3", goesTo), run.size(), like, lap);
    like.forEach(one -> bars.tie((long) TieWire.alongEdgeBar(one.run()) * one.count()));
    Length spacing = steel.setting(Setting.SUPPORT_SPACING);
    int blocks = laid.stream().mapToInt(one -> BarSupports.blocksUnder(one, spacing)).sum();
    String size = Supports.size(BarSupports.blockHeight(steel.units()), steel);
    String working =
        blocks
            + " along "
            + laid.size()
            + (laid.size() == 1 ? " run" : " runs")
            + ", one every "
            + steel.show(spacing);
    bars.counted("edge blocks", Material.BAR_SUPPORT, size, blocks, working, "BAR-7");
  }

  private void corners(int corners) {
    BarSize bar = run.size();
    int count = corners * run.count();
    Role role = new Role("corner bars", "BAR-3", "edge, corners");
    bars.bent(role, bar, BarShape.CORNER, count, List.of(lap, lap));
    bars.tie(TieWire.atLaps(2L * count));
  }
}
