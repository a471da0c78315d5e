package org.pourbook.cut;

import java.util.List;
import org.pourbook.measure.Length;

/** What planning a {@link CutJob} gave. */
public sealed interface CutResult {

  /**
   * A plan that yields every piece.
   *
   * @param patterns in canonical order
   * @param costMicros of all stock opened
   * @param boundMicros proven lower bound of the cost; equal to the cost when proven
   */
  record Planned(List<Pattern> patterns, long costMicros, long boundMicros) implements CutResult {
    public Planned {
      patterns = List.copyOf(patterns);
    }

    public boolean isProven() {
      return costMicros == boundMicros;
    }
  }

  /** There is no plan, for certain or as far as was found. */
  record Impossible(boolean certain, String why) implements CutResult {}

  /**
   * A stock piece cut in one way, {@code times} times.
   *
   * @param cuts longest first
   * @param offcut what is left of one piece after all cuts and kerfs
   */
  record Pattern(CutJob.Stock stock, int times, List<Cut> cuts, Length offcut) {
    public Pattern {
      cuts = List.copyOf(cuts);
    }
  }

  /** {@code count} like cuts in one stock piece, all for the same place. */
  record Cut(Length length, int count, String goesTo) {}
}
