package org.pourbook.takeoff;

import java.util.List;
import java.util.Optional;
import org.pourbook.job.Job;
import org.pourbook.job.Plate;
import org.pourbook.measure.BoltSize;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.rule.BoltLayout;
import org.pourbook.takeoff.rule.BoltLimits;

/** Where a plate's bolts miss what the code asks (BOLT-2 to BOLT-4). */
final class BoltCautions {

  private static final String CODE = ", IRC R403.1.6";

  private final Job job;
  private final OnOffer onOffer;
  private final Part part;
  private final Working working;

  BoltCautions(Job job, OnOffer onOffer, Part part) {
    this.job = job;
    this.onOffer = onOffer;
    this.part = part;
    this.working = new Working(job.units());
  }

  void of(Plate plate, List<BoltPiece> pieces) {
    Length embedment = BoltLimits.embedment(plate.bolt(), plate.projection());
    embedment(plate, embedment);
    depth(plate, embedment);
    diameter(plate);
    spacing(plate, pieces);
    for (BoltPiece piece : pieces) {
      shortPiece(plate, piece);
      ends(plate, piece);
    }
  }

  private void embedment(Plate plate, Length embedment) {
    if (BoltLimits.isDeepEnough(embedment)) {
      return;
    }
    List<BoltSize> onOfferBolts =
        onOffer.sizes(Material.ANCHOR_BOLT.label()).stream()
            .map(BoltSize::named)
            .flatMap(Optional::stream)
            .toList();
    String instead =
        BoltLimits.passing(onOfferBolts, plate.bolt(), plate.projection()).stream()
            .findFirst()
            .map(bolt -> "the shortest in the price book that passes is " + bolt + ".")
            .orElse("no bolt in the price book passes.");
    add(
        plate,
        "Bolt "
            + plate.bolt()
            + " is embedded "
            + working.small(embedment)
            + ", the code asks at least "
            + working.small(BoltLimits.LEAST_EMBEDMENT)
            + ": "
            + instead,
        "BOLT-3" + CODE);
  }

  private void depth(Plate plate, Length embedment) {
    Optional<Length> depth = DepthUnderPlate.of(job, plate);
    Length asked = BoltLimits.depthAsked(embedment);
    if (depth.isPresent() && depth.get().isLessThan(asked)) {
      add(
          plate,
          "Bolt "
              + plate.bolt()
              + " asks for concrete "
              + working.small(asked)
              + " deep (embedment and 3 in below it); section "
              + plate.section().orElse("")
              + " is "
              + working.small(depth.get())
              + " deep there.",
          "BOLT-3");
    }
  }

  private void diameter(Plate plate) {
    if (!BoltLimits.isThickEnough(plate.bolt().diameter())) {
      add(
          plate,
          "Bolt "
              + plate.bolt()
              + " is thinner than the "
              + working.small(BoltLimits.LEAST_DIAMETER)
              + " the code asks.",
          "BOLT-4" + CODE);
    }
  }

  private void spacing(Plate plate, List<BoltPiece> pieces) {
    Length widest = plate.spacing().orElse(Length.ZERO);
    for (BoltPiece piece : pieces) {
      for (int i = 1; i < piece.positions().size(); i++) {
        widest = widest.max(piece.positions().get(i).minus(piece.positions().get(i - 1)));
      }
    }
    if (!BoltLimits.isCloseEnough(widest)) {
      add(
          plate,
          "Bolts up to "
              + working.length(widest)
              + " apart; the code allows at most "
              + working.length(BoltLayout.LARGEST_SPACING)
              + ".",
          "BOLT-4" + CODE);
    }
  }

  private void shortPiece(Plate plate, BoltPiece piece) {
    int bolts = piece.positions().size();
    if (bolts >= 2) {
      return;
    }
    String has = bolts == 0 ? " has no bolt" : " has one bolt, in its middle third";
    add(
        plate,
        "Piece "
            + piece.piece()
            + ", "
            + working.length(piece.length())
            + " long,"
            + has
            + ": the code allows that only in an offset wall of a braced line.",
        "BOLT-2" + CODE);
  }

  private void ends(Plate plate, BoltPiece piece) {
    if (piece.positions().size() < 2) {
      return;
    }
    Length end = piece.positions().get(0);
    if (!BoltLimits.isEndSound(end, plate.bolt().diameter())) {
      add(
          plate,
          "Piece "
              + piece.piece()
              + " has its end bolts "
              + working.small(end)
              + " from the ends; the code asks at most "
              + working.small(BoltLimits.LARGEST_END)
              + " and at least 7 diameters, "
              + working.small(plate.bolt().diameter().times(BoltLayout.END_DIAMETERS))
              + ".",
          "BOLT-4" + CODE);
    }
  }

  private void add(Plate plate, String says, String rule) {
    part.add(new Caution(plate.code(), says, rule));
  }
}
