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
 * @param divisions where the joints of runs lie
 * @param bound proven lower bound of the cost of these pieces
 * @param anywhere proven lower bound of the cost wherever the joints of runs lie
 */
public record CutSheet(
    List<String> jobs,
    UnitSystem units,
    MaterialKey key,
    List<CutResult.Pattern> patterns,
    List<CutResult.Division> divisions,
    Money cost,
    Money bound,
    boolean proven,
    Money anywhere) {
  public CutSheet {
    jobs = List.copyOf(jobs);
    patterns = List.copyOf(patterns);
    divisions = List.copyOf(divisions);
  }

  /** Returns whether a pattern's stock comes from an earlier order. */
  public static boolean isInHand(CutResult.Pattern pattern) {
    return StockInHand.isOf(pattern);
  }
}
