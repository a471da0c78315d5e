package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.pourbook.job.Job;
import org.pourbook.job.Pour;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.rule.FormReuse;
import org.pourbook.takeoff.rule.FormReuse.Lot;
import org.pourbook.takeoff.rule.FormReuse.Served;

/** Takes out what earlier pours leave for later ones (FORM-8), and adds the pieces to be cut. */
final class ReusedForms {

  private static final Comparator<FormPiece> ORDER =
      Comparator.comparing(FormPiece::what)
          .thenComparing(FormPiece::length, Comparator.reverseOrder())
          .thenComparing(FormPiece::material)
          .thenComparing(FormPiece::goesTo);

  private final Job job;
  private final Part part;
  private final Working working;
  private final Map<String, List<Stripped>> pool = new TreeMap<>();

  /** Pieces to be cut new, and what is used again by some pour. */
  private final List<FormPiece> cut = new ArrayList<>();

  private final Set<String> usedAgain = new HashSet<>();

  /** Used forms that a later pour may take. */
  private record Stripped(Pour pour, Length length, int count) {}

  private ReusedForms(Job job, Part part) {
    this.job = job;
    this.part = part;
    this.working = new Working(job.units());
  }

  /** Adds, for every pour, what it uses again and the pieces it needs new. */
  static void add(Job job, List<FormPiece> pieces, Part part) {
    ReusedForms reused = new ReusedForms(job, part);
    for (Pour pour : byDay(job)) {
      Map<String, List<FormPiece>> ofPour =
          pieces.stream()
              .filter(piece -> piece.pour() == pour.number())
              .sorted(ORDER)
              .collect(
                  Collectors.groupingBy(FormPiece::what, LinkedHashMap::new, Collectors.toList()));
      ofPour.forEach((what, wanted) -> reused.pour(pour, what, wanted));
    }
    reused.addCut();
  }

  /** Returns the pours by date, those without a date last. */
  private static List<Pour> byDay(Job job) {
    return job.pours().stream()
        .sorted(
            Comparator.comparingLong(
                    (Pour pour) -> pour.date().map(d -> d.toEpochDay()).orElse(Long.MAX_VALUE))
                .thenComparing(Pour::number))
        .toList();
  }

  private void pour(Pour pour, String what, List<FormPiece> wanted) {
    List<FormPiece> open = wanted;
    if (pour.date().isPresent()) {
      open = serve(pour, what, wanted);
      double loss = job.practice().number(Setting.REUSE_LOSS);
      for (Lot lot : FormReuse.kept(wanted.stream().map(FormPiece::lot).toList(), loss)) {
        pool.computeIfAbsent(what, key -> new ArrayList<>())
            .add(new Stripped(pour, lot.length(), lot.count()));
      }
    }
    for (FormPiece piece : open) {
      if (piece.cut() && piece.count() > 0) {
        cut.add(piece);
      } else if (piece.count() > 0) {
        part.addPegs(piece.need());
      }
    }
  }

  /**
   * Boards that serve again do so in the lengths in which they are listed; those of other sizes
   * that are butted at the same places follow them.
   */
  private void addCut() {
    for (FormPiece piece : cut) {
      boolean follows = piece.need().joined().filter(Joined::tied).isPresent();
      boolean listed = usedAgain.contains(piece.what()) || (follows && !usedAgain.isEmpty());
      part.add((listed ? piece.asListed() : piece).need());
    }
  }

  /** Returns the pieces still to be had new; adds what is used again as rows that take it out. */
  private List<FormPiece> serve(Pour pour, String what, List<FormPiece> wanted) {
    List<Stripped> lots = pool.getOrDefault(what, new ArrayList<>());
    List<Lot> ready =
        lots.stream()
            .filter(lot -> isStripped(lot.pour(), pour))
            .map(lot -> new Lot(lot.length(), lot.count()))
            .toList();
    List<Served> served = FormReuse.serve(wanted.stream().map(FormPiece::lot).toList(), ready);
    served.forEach(some -> take(lots, pour, some));
    Map<MaterialKey, List<FormPiece>> again = new LinkedHashMap<>();
    List<FormPiece> open = new ArrayList<>();
    Map<Length, Integer> left =
        served.stream().collect(Collectors.toMap(Served::wanted, Served::count, Integer::sum));
    for (FormPiece piece : wanted) {
      int taken = Math.min(piece.count(), left.getOrDefault(piece.length(), 0));
      left.merge(piece.length(), -taken, Integer::sum);
      open.add(piece.withCount(piece.count() - taken));
      if (taken > 0) {
        usedAgain.add(what);
        again
            .computeIfAbsent(piece.material(), key -> new ArrayList<>())
            .add(piece.withCount(taken));
      }
    }
    again.forEach((material, pieces) -> takeOut(pour, what, material, pieces));
    return open;
  }

  private boolean isStripped(Pour earlier, Pour pour) {
    return FormReuse.isStripped(
        earlier.date().orElseThrow(),
        pour.date().orElseThrow(),
        job.practice().number(Setting.STRIP_AFTER));
  }

  private void take(List<Stripped> lots, Pour pour, Served served) {
    int open = served.count();
    for (int i = 0; i < lots.size() && open > 0; i++) {
      Stripped lot = lots.get(i);
      if (lot.length().equals(served.used()) && isStripped(lot.pour(), pour)) {
        int taken = Math.min(open, lot.count());
        lots.set(i, new Stripped(lot.pour(), lot.length(), lot.count() - taken));
        open -= taken;
      }
    }
    lots.removeIf(lot -> lot.count() == 0);
  }

  private void takeOut(Pour pour, String what, MaterialKey material, List<FormPiece> pieces) {
    boolean cut = pieces.get(0).cut();
    Unit unit = cut ? working.lengthUnit() : Unit.EACH;
    Length length =
        pieces.stream()
            .map(piece -> piece.length().times(piece.count()))
            .reduce(Length.ZERO, Length::plus);
    int count = pieces.stream().mapToInt(FormPiece::count).sum();
    double amount = cut ? (unit == Unit.FT ? length.feet() : length.metres()) : count;
    Map<Length, Integer> byLength = new TreeMap<>(Comparator.reverseOrder());
    pieces.forEach(piece -> byLength.merge(piece.length(), piece.count(), Integer::sum));
    String says =
        byLength.entrySet().stream()
            .map(some -> some.getValue() + (cut ? " × " + working.length(some.getKey()) : ""))
            .collect(Collectors.joining(" + "));
    String figure = Working.number(amount) + (cut ? " " + unit.label() : "");
    part.add(
        Quantity.of(
            "",
            what + " used again",
            -amount,
            unit,
            "−(" + says + ") = −" + figure,
            "FORM-8",
            material,
            pour.number()));
  }
}
