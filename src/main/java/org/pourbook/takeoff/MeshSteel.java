package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.OnOffer.SheetSize;
import org.pourbook.takeoff.rule.BarSupports;
import org.pourbook.takeoff.rule.MeshSheets;

/** Welded wire mesh of a section, laid in sheets or off rolls (MESH-1). */
final class MeshSteel {

  /** From this length on it comes on a roll, and a strip's rest goes on in the next one. */
  private static final Length ROLL = Length.ofFeet(50);

  private static final SheetSize USUAL = new SheetSize(Length.ofFeet(10), Length.ofFeet(5));

  private final SteelJob steel;
  private final Section section;
  private final MeshStyle style;
  private final MaterialKey key;
  private final BarsOf bars;

  MeshSteel(SteelJob steel, Section section, String written, BarsOf bars) {
    this.steel = steel;
    this.section = section;
    this.bars = bars;
    this.key = Material.MESH.of(written);
    this.style = MeshStyle.named(written).orElseGet(() -> unread(written));
  }

  private MeshStyle unread(String written) {
    String says = "Mesh \"" + written + "\" cannot be read: laps are for wires 6\" apart.";
    steel.caution(section.code(), says, "MESH-1");
    return MeshStyle.usual();
  }

  void add() {
    List<Laid> ways = new ArrayList<>();
    for (SheetSize sheet : sheets()) {
      for (boolean along : List.of(true, false)) {
        if (fits(sheet)) {
          ways.add(laid(sheet, along));
        }
      }
    }
    ways.stream().min(Comparator.comparingDouble(Laid::boughtM2)).ifPresent(this::lay);
    supports();
  }

  /**
   * One way to lay mesh over one section.
   *
   * @param runM of all strips with their end laps [m]
   * @param sheets with the rests of cut ones used
   */
  private record Laid(
      SheetSize sheet, boolean along, int strips, int endLaps, double runM, int sheets) {

    double laidM2() {
      return runM * sheet.width().metres();
    }

    double boughtM2() {
      boolean roll = !sheet.length().isLessThan(ROLL);
      return roll ? laidM2() : sheets * sheet.length().metres() * sheet.width().metres();
    }
  }

  private List<SheetSize> sheets() {
    List<SheetSize> offered = steel.onOffer().sheets(key).stream().filter(this::fits).toList();
    return offered.isEmpty() ? List.of(USUAL) : offered;
  }

  private boolean fits(SheetSize sheet) {
    return sheet.length().isMoreThan(endLap()) && sheet.width().isMoreThan(sideLap());
  }

  private Length endLap() {
    return MeshSheets.lap(style.acrossSpace());
  }

  private Length sideLap() {
    return MeshSheets.lap(style.alongSpace());
  }

  private Laid laid(SheetSize sheet, boolean along) {
    List<Runs> strips = Runs.gathered(MeshStrips.of(section, along, sheet.width(), sideLap()));
    double runM = 0;
    int count = 0;
    int endLaps = 0;
    int sheets = 0;
    for (Runs strip : strips) {
      int laps = MeshSheets.over(strip.run(), sheet.length(), endLap()) - 1;
      runM += strip.run().plus(endLap().times(laps)).metres() * strip.count();
      sheets += MeshSheets.sheets(strip.count(), strip.run(), sheet.length(), endLap());
      endLaps += laps * strip.count();
      count += strip.count();
    }
    return new Laid(sheet, along, count, endLaps, runM, sheets);
  }

  private void lay(Laid laid) {
    int times = steel.job().timesOf(section);
    Working working = steel.working();
    Unit unit = Material.MESH.unit(steel.units());
    double net = unit.fromBase(laid.laidM2() * times);
    String laps =
        laid.endLaps() == 0
            ? ""
            : " with " + laid.endLaps() + " end laps of " + steel.small(endLap());
    String strips =
        laid.strips()
            + (laid.along() ? " strips along, " : " strips across, ")
            + working.run(laid.runM())
            + laps
            + " × "
            + steel.show(laid.sheet().width())
            + working.times(times);
    add("mesh", net, unit, strips + SteelJob.equal(net, unit));
    double rest = unit.fromBase((laid.boughtM2() - laid.laidM2()) * times);
    if (rest > 1e-9) {
      String sheets =
          "("
              + laid.sheets()
              + " sheets of "
              + steel.show(laid.sheet().width())
              + " × "
              + steel.show(laid.sheet().length())
              + " − "
              + working.area(laid.laidM2())
              + ")"
              + working.times(times);
      add("mesh cut away", rest, unit, sheets + SteelJob.equal(rest, unit));
    }
  }

  private void add(String what, double amount, Unit unit, String working) {
    steel
        .part()
        .add(
            Quantity.of(
                section.code(), what, amount, unit, working, "MESH-1", key, section.pour()));
  }

  /** Mesh beside bars rests on them. */
  private void supports() {
    if (section.bars().isPresent()) {
      return;
    }
    Length cover = SteelJob.topCover(steel.job(), section);
    Length height = BarSupports.height(section.thickness(), cover, style.wires(), steel.units());
    if (!height.isPositive()) {
      String says = "The mesh does not fit into " + steel.small(section.thickness()) + ".";
      steel.caution(section.code(), says, "BAR-7");
      return;
    }
    Length spacing = steel.setting(Setting.SUPPORT_SPACING_MESH);
    Supports.add(steel, section, bars, spacing, height, MeshSheets.edge(), List.of());
  }
}
