package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.job.BarMat;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.BarsOf.Role;
import org.pourbook.takeoff.rule.BarSupports;
import org.pourbook.takeoff.rule.TieWire;

/** The mat of bars of a section, with what carries and ties it (BAR-1, BAR-7, BAR-8). */
final class MatSteel {

  private static final Length WIDEST_SPACING = Length.ofInches(18);
  private static final Length GROUND_COVER = Length.ofInches(3);
  private static final Length THIN_COVER_BELOW = Length.ofInches(1);

  private final SteelJob steel;
  private final Section section;
  private final BarMat mat;
  private final BarsOf bars;
  private final Length cover;

  MatSteel(SteelJob steel, Section section, BarMat mat, BarsOf bars) {
    this.steel = steel;
    this.section = section;
    this.mat = mat;
    this.bars = bars;
    this.cover = steel.setting(Setting.EDGE_COVER);
  }

  void add() {
    List<MatLine> along = lines(true);
    List<MatLine> across = lines(false);
    lay(along, true);
    lay(across, false);
    bars.tie(TieWire.atCrossings(crossings(along, across)));
    supports();
    cautions();
  }

  private List<MatLine> lines(boolean along) {
    Length spacing = along ? mat.alongSpacing() : mat.acrossSpacing();
    Length shortest = steel.setting(Setting.SHORTEST_BAR);
    List<MatLine> lines = MatLine.of(section, along, spacing, cover);
    for (Section recess : Steps.interrupting(steel, section, bar(along))) {
      lines = lines.stream().flatMap(Steps.interruption(section, recess, along, cover)).toList();
    }
    return lines.stream().filter(line -> !line.length().isLessThan(shortest)).toList();
  }

  private BarSize bar(boolean along) {
    return along ? mat.along() : mat.across();
  }

  private void lay(List<MatLine> lines, boolean along) {
    String way = along ? "along" : "across";
    List<Length> lengths = lines.stream().map(MatLine::length).toList();
    List<Runs> runs = Runs.gathered(withoutShare(lengths, share(along)));
    Role role = new Role("bars " + way, "BAR-1", "floor, " + way);
    bars.straight(role, bar(along), runs, lap(bar(along)));
  }

  private double share(boolean along) {
    return Steps.unplacedShare(section, Steps.interrupting(steel, section, bar(along)));
  }

  /** Takes a share of the whole length off as whole bars, and as a shorter one for the rest. */
  private static List<Length> withoutShare(List<Length> lengths, double share) {
    if (share == 0) {
      return lengths;
    }
    double totalM = lengths.stream().mapToDouble(Length::metres).sum();
    Length left = Length.ofMetres(totalM * (1 - share));
    List<Length> kept = new ArrayList<>();
    for (Length length : lengths) {
      Length taken = length.min(left);
      if (taken.isPositive()) {
        kept.add(taken);
        left = left.minus(taken);
      }
    }
    return kept;
  }

  private Length lap(BarSize bar) {
    return steel.laps().of(bar, section.mix(), isOnBlocks() ? Length.ZERO : below());
  }

  /** Mats of footings, thickenings and piers lie at the bottom, those of floors near the top. */
  private boolean isOnBlocks() {
    return !section.kind().isFloor();
  }

  private Length below() {
    return section.thickness().minus(SteelJob.topCover(steel.job(), section)).minus(layers());
  }

  private Length layers() {
    return mat.along().diameter().plus(mat.across().diameter());
  }

  private long crossings(List<MatLine> along, List<MatLine> across) {
    long crossings = 0;
    for (MatLine line : along) {
      crossings += across.stream().filter(line::crosses).count();
    }
    double share = Math.max(share(true), share(false));
    return (long) StrictMath.ceil(crossings * (1 - share));
  }

  private void supports() {
    Length spacing = steel.setting(Setting.SUPPORT_SPACING);
    Length height =
        isOnBlocks()
            ? BarSupports.blockHeight(steel.units())
            : BarSupports.height(
                section.thickness(),
                SteelJob.topCover(steel.job(), section),
                layers(),
                steel.units());
    if (!height.isPositive()) {
      String says =
          "The bars do not fit into " + steel.small(section.thickness()) + " of concrete.";
      steel.caution(section.code(), says, "BAR-7");
      return;
    }
    List<Section> gaps = new ArrayList<>(Steps.interrupting(steel, section, mat.along()));
    gaps.retainAll(Steps.interrupting(steel, section, mat.across()));
    Supports.add(steel, section, bars, spacing, height, cover, gaps);
  }

  private void cautions() {
    if (section.kind() != Kind.PIER && below().isLessThan(THIN_COVER_BELOW)) {
      String says =
          "Bars lie "
              + steel.small(below())
              + " above the base; concrete cast against ground has "
              + steel.small(GROUND_COVER)
              + " of cover.";
      steel.caution(section.code(), says, "BAR-7, ACI 318-19 Table 20.5.1.3.1");
    }
    Length widest = mat.alongSpacing().max(mat.acrossSpacing());
    if (widest.isMoreThan(WIDEST_SPACING)) {
      String says =
          "Bars "
              + steel.small(widest)
              + " apart: more than the usual limit of "
              + steel.small(WIDEST_SPACING)
              + ".";
      steel.caution(section.code(), says, "BAR-1, ACI 318-19 24.4.3.3 (from memory)");
    }
  }
}
