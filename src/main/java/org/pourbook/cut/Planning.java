package org.pourbook.cut;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import org.pourbook.measure.Length;

/** What every planner does before and after it plans: refuse, normalise, write and check. */
final class Planning {
  static final String NOT_ENOUGH = "There is not enough stock for all pieces.";
  static final String NO_STOCK = "No stock is on offer.";

  private Planning() {}

  /**
   * What a search in a model gave.
   *
   * @param bound lower bound of the cost; empty where no plan can exist
   */
  record Found(Optional<Packing> packing, OptionalLong bound) {
    static Found certainlyNone() {
      return new Found(Optional.empty(), OptionalLong.empty());
    }
  }

  /**
   * Returns what the search found, as a checked plan of the job.
   *
   * @param runs effort of the choice where the joints of runs lie; empty: full lengths first
   */
  static CutResult plan(CutJob job, Function<CutModel, Found> search, Optional<Effort> runs) {
    Optional<CutJob.Piece> tooLong = Offers.tooLong(job);
    if (tooLong.isPresent()) {
      return new CutResult.Impossible(true, longerThanStock(job, tooLong.get()));
    }
    if (!job.isPriced()) {
      return planByLength(job, search, runs);
    }
    if (!job.runs().isEmpty()) {
      return RunPlans.plan(job, search, runs);
    }
    Normalised normalised = Normalised.of(job);
    Found found = search.apply(normalised.model());
    if (found.bound().isEmpty()) {
      return new CutResult.Impossible(true, NOT_ENOUGH);
    }
    if (found.packing().isEmpty()) {
      return new CutResult.Impossible(
          false, "No way was found to cut all pieces from the limited stock.");
    }
    return PlanCheck.check(
        job, PlanWriter.write(job, normalised, found.packing().get(), found.bound().getAsLong()));
  }

  private static CutResult planByLength(
      CutJob job, Function<CutModel, Found> search, Optional<Effort> runs) {
    if (job.stock().isEmpty()) {
      return job.runs().isEmpty()
          ? new CutResult.Planned(List.of(), 0, 0)
          : new CutResult.Impossible(true, NO_STOCK);
    }
    CutResult result = plan(job.pricedByLength(), search, runs);
    if (!(result instanceof CutResult.Planned planned)) {
      return result;
    }
    List<CutResult.Pattern> free =
        planned.patterns().stream()
            .map(p -> new CutResult.Pattern(free(p.stock()), p.times(), p.cuts(), p.offcut()))
            .toList();
    return PlanCheck.check(job, new CutResult.Planned(free, 0, 0, planned.divisions(), 0));
  }

  private static CutJob.Stock free(CutJob.Stock stock) {
    return new CutJob.Stock(stock.id(), stock.length(), 0, stock.limit());
  }

  private static String longerThanStock(CutJob job, CutJob.Piece piece) {
    Length longest =
        job.stock().stream().map(CutJob.Stock::length).max(Length::compareTo).orElse(Length.ZERO);
    return longest.isZero()
        ? NO_STOCK
        : "A piece of " + piece.length() + " is longer than the longest stock, " + longest + ".";
  }
}
