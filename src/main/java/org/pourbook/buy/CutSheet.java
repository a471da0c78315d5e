package org.pourbook.buy;

import java.util.List;
import org.pourbook.cut.CutResult;
import org.pourbook.measure.Money;
import org.pourbook.measure.UnitSystem;
import org.pourbook.takeoff.MaterialKey;

/**
 * The cut plan of a material for a job, or for jobs that share a delivery.
 *
 * @param jobs all codes of a shared plan
 * @param cost of the stock opened; zero where nothing is priced
 * @param bound proven lower bound of the cost
 */
public record CutSheet(
    List<String> jobs,
    UnitSystem units,
    MaterialKey key,
    List<CutResult.Pattern> patterns,
    Money cost,
    Money bound,
    boolean proven) {
  public CutSheet {
    jobs = List.copyOf(jobs);
    patterns = List.copyOf(patterns);
  }

  /** Returns whether a pattern's stock comes from an earlier order. */
  public static boolean isInHand(CutResult.Pattern pattern) {
    return StockInHand.isOf(pattern);
  }
}
