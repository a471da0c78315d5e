package org.pourbook.buy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pourbook.cut.CutResult;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.Joined;
import org.pourbook.takeoff.PieceNeed;

/** The pieces of tied runs in a lot, put where their joints are settled. */
final class TiedPieces {

  private TiedPieces() {}

  /** Like runs of one place, whatever the size of their boards. */
  record Run(String job, int pour, String goesTo, Length length, int joints) {}

  /** So many runs joined of these pieces. */
  record Division(List<Length> pieces, int times) {
    Division {
      pieces = List.copyOf(pieces);
    }
  }

  static boolean isAnyTied(Portion portion) {
    return portion.pieces().stream().anyMatch(TiedPieces::isTied);
  }

  private static boolean isTied(PieceNeed need) {
    return need.joined().filter(Joined::tied).isPresent();
  }

  private static Run run(Portion portion, PieceNeed need) {
    Joined joined = need.joined().orElseThrow();
    return new Run(
        portion.job().code(), need.pour(), need.goesTo(), joined.length(), joined.joints());
  }

  /**
   * Returns a lot with the pieces of settled runs, to be cut as listed.
   *
   * @param free whether the runs that are not settled are tied no longer
   */
  static Lot in(Lot lot, Map<Run, List<Division>> settled, boolean free) {
    if (lot.portions().stream().noneMatch(TiedPieces::isAnyTied)) {
      return lot;
    }
    return lot.withPortions(
        lot.portions().stream().map(portion -> in(portion, settled, free)).toList());
  }

  private static Portion in(Portion portion, Map<Run, List<Division>> settled, boolean free) {
    List<PieceNeed> pieces = new ArrayList<>();
    Set<Run> made = new HashSet<>();
    for (PieceNeed need : portion.pieces()) {
      if (!isTied(need)) {
        pieces.add(need);
        continue;
      }
      List<Division> divisions = settled.getOrDefault(run(portion, need), List.of());
      if (divisions.isEmpty()) {
        pieces.add(free ? freed(need) : need);
      } else if (made.add(run(portion, need))) {
        divisions.forEach(division -> add(need, division, pieces));
      }
    }
    return portion.cut(pieces);
  }

  private static PieceNeed freed(PieceNeed need) {
    Joined joined = need.joined().orElseThrow();
    return new PieceNeed(
        need.material(),
        need.length(),
        need.count(),
        need.goesTo(),
        need.mark(),
        need.pour(),
        Optional.of(joined.of(joined.courses(), false)));
  }

  private static void add(PieceNeed one, Division division, List<PieceNeed> pieces) {
    int courses = one.joined().orElseThrow().courses();
    Map<Length, Integer> counts = new LinkedHashMap<>();
    division.pieces().forEach(length -> counts.merge(length, 1, Integer::sum));
    counts.forEach(
        (length, count) ->
            pieces.add(
                new PieceNeed(
                    one.material(),
                    length,
                    count * courses * division.times(),
                    one.goesTo(),
                    one.mark(),
                    one.pour())));
  }

  /**
   * Returns where a plan joins a lot's tied runs.
   *
   * @param known runs that were settled before
   * @param divisions of the plan, which says in words where runs go
   */
  static Map<Run, List<Division>> divisions(
      Lot lot, Set<Run> known, List<CutResult.Division> divisions) {
    boolean shared = lot.jobs().size() > 1;
    Map<Run, List<Division>> found = new LinkedHashMap<>();
    for (Portion portion : lot.portions()) {
      for (PieceNeed need : portion.pieces()) {
        if (isTied(need) && !known.contains(run(portion, need))) {
          String words = new CutPiece(portion, need).goesTo(shared);
          Run run = run(portion, need);
          List<Division> of =
              divisions.stream()
                  .filter(division -> division.run().goesTo().equals(words))
                  .filter(division -> division.run().length().equals(run.length()))
                  .filter(division -> division.run().joints() == run.joints())
                  .map(division -> new Division(division.pieces(), division.times()))
                  .toList();
          if (!of.isEmpty()) {
            found.put(run, of);
          }
        }
      }
    }
    return found;
  }
}
