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
   * @param boundMicros proven lower bound of the cost of these pieces, runs divided as they are;
   *     equal to the cost when proven
   * @param divisions where the joints of runs lie
   * @param anywhereMicros proven lower bound of the cost wherever the joints of runs lie, their
   *     number being what it is; never above {@code boundMicros}, the same where there are no runs
   */
  record Planned(
      List<Pattern> patterns,
      long costMicros,
      long boundMicros,
      List<Division> divisions,
      long anywhereMicros)
      implements CutResult {
    public Planned {
      patterns = List.copyOf(patterns);
      divisions = List.copyOf(divisions);
    }

    /** Makes a plan of pieces alone. */
    public Planned(List<Pattern> patterns, long costMicros, long boundMicros) {
      this(patterns, costMicros, boundMicros, List.of(), boundMicros);
    }

    /** Returns whether no plan of the same pieces costs less. */
    public boolean isProven() {
      return costMicros == boundMicros;
    }

    /** Returns whether no plan costs less, wherever the joints of runs lie. */
    public boolean isProvenAnywhere() {
      return costMicros == anywhereMicros;
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

  /**
   * Where the joints of {@code times} like runs lie.
   *
   * @param pieces of one course, longest first; together as long as the run with its laps
   */
  record Division(CutJob.Run run, List<Length> pieces, int times) {
    public Division {
      pieces = List.copyOf(pieces);
    }
  }

  /** {@code count} like cuts in one stock piece, all for the same place. */
  record Cut(Length length, int count, String goesTo) {}
}
