package org.pourbook.buy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.pourbook.job.Setting;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.Material.Planning;
import org.pourbook.takeoff.PieceNeed;

/**
 * What a job needs of a material, to be compared with what it needed before. Where pieces go and
 * when they are needed does not count.
 *
 * @param pieces of a cut-planned material, by length
 * @param amounts of any other, in the base unit; of concrete by pour
 * @param spare pieces
 */
record Needs(Map<Length, Integer> pieces, Map<Integer, BigDecimal> amounts, int spare) {

  /** Decimals to which amounts are compared: sums in another order are the same sums. */
  private static final int DECIMALS = 6;

  /** Returns the needs by job. */
  static Map<String, Needs> of(List<Lot> lots) {
    Map<String, Needs> needs = new TreeMap<>();
    for (Lot lot : lots) {
      for (Portion portion : lot.portions()) {
        int spare = (int) portion.job().practice().number(Setting.SPARE_PIECES);
        needs
            .computeIfAbsent(
                portion.job().code(), k -> new Needs(new TreeMap<>(), new TreeMap<>(), spare))
            .add(portion, lot.planning() == Planning.BY_POUR ? portion.pour() : 0);
      }
    }
    return needs;
  }

  private void add(Portion portion, int pour) {
    for (PieceNeed piece : portion.pieces()) {
      pieces.merge(piece.length(), piece.count(), Integer::sum);
    }
    if (portion.pieces().isEmpty()) {
      amounts.merge(pour, rounded(portion.needed()), BigDecimal::add);
    }
  }

  private static BigDecimal rounded(double amount) {
    return BigDecimal.valueOf(amount).setScale(DECIMALS, RoundingMode.HALF_UP);
  }
}
