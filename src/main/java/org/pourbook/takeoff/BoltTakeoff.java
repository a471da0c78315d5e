package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.pourbook.job.Job;
import org.pourbook.job.Plate;
import org.pourbook.job.Pour;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.rule.BoltLayout;
import org.pourbook.takeoff.rule.BoltLimits;
import org.pourbook.takeoff.rule.PlatePieces;
import org.pourbook.takeoff.rule.SpareBolts;

/** Anchor bolts of a job's wall plates, with nuts and washers (BOLT-1 to BOLT-5). */
public final class BoltTakeoff {

  private final Job job;
  private final Working working;
  private final Part part = new Part();

  private BoltTakeoff(Job job) {
    this.job = job;
    this.working = new Working(job.units());
  }

  /**
   * Returns the rows, the plate pieces with their bolts, and the cautions.
   *
   * @param onOffer from which a bolt that is long enough is named where one is not
   */
  public static Part of(Job job, OnOffer onOffer) {
    BoltTakeoff bolts = new BoltTakeoff(job);
    for (Plate plate : job.plates()) {
      List<BoltPiece> pieces = bolts.pieces(plate);
      pieces.forEach(bolts.part::add);
      bolts.rows(plate, pieces);
      new BoltCautions(job, onOffer, bolts.part).of(plate, pieces);
    }
    bolts.spares();
    return bolts.part;
  }

  private List<BoltPiece> pieces(Plate plate) {
    Length spacing =
        plate
            .spacing()
            .orElse(BoltLayout.usualSpacing(job.practice().length(Setting.BOLT_TOLERANCE)));
    Length endUsual = job.practice().length(Setting.BOLT_END_DISTANCE);
    List<BoltPiece> pieces = new ArrayList<>();
    for (Length length : PlatePieces.of(plate.length(), plate.pieceLength())) {
      List<Length> positions =
          BoltLayout.positions(length, plate.bolt().diameter(), endUsual, spacing);
      pieces.add(
          new BoltPiece(
              plate.code(),
              pieces.size() + 1,
              plate.count(),
              length,
              positions.size() * plate.count(),
              positions,
              plate.bolt(),
              BoltLimits.embedment(plate.bolt(), plate.projection())));
    }
    return pieces;
  }

  private void rows(Plate plate, List<BoltPiece> pieces) {
    int bolts = pieces.stream().mapToInt(BoltPiece::bolts).sum();
    if (bolts == 0) {
      return;
    }
    String sum = says(pieces) + working.times(plate.count()) + " = " + bolts;
    String size = plate.bolt().designation();
    String diameter = plate.bolt().diameterName();
    String each = "1 a bolt × " + bolts + " = " + bolts;
    int pour = pour(plate);
    buy(plate.code(), "anchor bolts", bolts, sum, "BOLT-2", Material.ANCHOR_BOLT.of(size), pour);
    buy(plate.code(), "nuts", bolts, each, "BOLT-5", Material.NUT.of(diameter), pour);
    buy(plate.code(), "washers", bolts, each, "BOLT-5", Material.PLATE_WASHER.of(diameter), pour);
  }

  /** Returns {@code (4 + 3)}: the bolts of each piece. */
  private static String says(List<BoltPiece> pieces) {
    String sum =
        pieces.stream()
            .map(piece -> String.valueOf(piece.positions().size()))
            .collect(Collectors.joining(" + "));
    return pieces.size() == 1 ? sum : "(" + sum + ")";
  }

  /** Returns the pour of a plate's section; of a plate without one, the first. */
  private int pour(Plate plate) {
    return plate
        .section()
        .map(code -> job.section(code).pour())
        .orElse(job.pours().stream().mapToInt(Pour::number).min().orElse(1));
  }

  /** Adds the spares, with the first pour that needs the size. */
  private void spares() {
    Map<MaterialKey, List<Quantity>> bySize = new TreeMap<>();
    for (Quantity quantity : part.quantities()) {
      bySize
          .computeIfAbsent(quantity.material().orElseThrow(), k -> new ArrayList<>())
          .add(quantity);
    }
    double percent = job.practice().number(Setting.SPARE_BOLTS);
    bySize.forEach(
        (material, of) -> {
          int count = of.stream().mapToInt(quantity -> (int) quantity.amount()).sum();
          int pour = of.stream().map(Quantity::pour).min(Comparator.naturalOrder()).orElse(1);
          int spare = SpareBolts.count(count, percent);
          String says = "max(2, ⌈" + count + " × " + Working.number(percent) + " %⌉) = " + spare;
          if (spare > 0) {
            buy("", spareName(material), spare, says, "BOLT-5", material, pour);
          }
        });
  }

  private static String spareName(MaterialKey material) {
    return switch (Material.named(material.material()).orElseThrow()) {
      case ANCHOR_BOLT -> "spare bolts";
      case NUT -> "spare nuts";
      default -> "spare washers";
    };
  }

  private void buy(
      String plate, String what, int count, String says, String rule, MaterialKey key, int pour) {
    part.add(Quantity.of(plate, what, count, Unit.EACH, says, rule, key, pour));
  }
}
