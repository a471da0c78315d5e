package org.pourbook.buy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pourbook.cut.CutJob;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.Joined;
import org.pourbook.takeoff.PieceNeed;

/** The runs that listed pieces stand for, as a cut plan takes them. */
final class CutRuns {

  /** Pieces of one key are the pieces of like runs. */
  private record Key(String job, int pour, String goesTo, Joined joined) {}

  private CutRuns() {}

  /**
   * Returns the runs; each goes to the index of its first piece.
   *
   * @param longest stock there is
   */
  static List<CutJob.Run> of(List<CutPiece> pieces, Length longest, Length step) {
    Map<Key, List<Integer>> indexes = new LinkedHashMap<>();
    for (int i = 0; i < pieces.size(); i++) {
      Portion portion = pieces.get(i).portion();
      PieceNeed need = pieces.get(i).need();
      if (need.run().isPresent()) {
        Joined joined = need.run().get();
        indexes
            .computeIfAbsent(
                new Key(portion.job().code(), portion.pour(), need.goesTo(), joined),
                k -> new ArrayList<>())
            .add(i);
      }
    }
    List<CutJob.Run> runs = new ArrayList<>();
    indexes.forEach(
        (key, of) -> {
          int count = of.stream().mapToInt(i -> pieces.get(i).need().count()).sum();
          runs.add(run(key.joined(), of.get(0), count, longest, step));
        });
    return runs;
  }

  private static CutJob.Run run(Joined joined, int index, int pieces, Length longest, Length step) {
    int each = (joined.joints() + 1) * joined.courses();
    if (pieces % each != 0) {
      throw new IllegalStateException("a run lacks some of its pieces: " + joined);
    }
    return new CutJob.Run(
        uncut(joined, longest.min(joined.longest()), step),
        joined.joints(),
        joined.lap(),
        joined.shortest().roundedDownTo(step),
        joined.longest(),
        joined.courses(),
        pieces / each,
        Integer.toString(index));
  }

  /**
   * A run as long as whole pieces of the longest length, but for steps, is these: nothing is cut.
   */
  private static Length uncut(Joined joined, Length longest, Length step) {
    long pieces = joined.joints() + 1L;
    Length laps = joined.lap().times(joined.joints());
    Length total = joined.length().plus(laps);
    Length whole = longest.roundedDownTo(step).times(pieces);
    boolean isWhole = total.isMoreThan(whole) && !total.isMoreThan(longest.times(pieces));
    return isWhole ? whole.minus(laps) : joined.length();
  }
}
