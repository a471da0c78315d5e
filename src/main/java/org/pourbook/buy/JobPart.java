package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.List;
import org.pourbook.job.Job;
import org.pourbook.measure.Money;

/**
 * A job's part of a lot.
 *
 * @param portions of the lot that are the job's, one or more
 * @param fraction how much of the lot is the job's, by need
 */
record JobPart(Lot lot, List<Portion> portions, double fraction, List<Bought> bought) {

  /** Decimals of a job's share of order units. */
  private static final int SHARE_DECIMALS = 6;

  /** The job's share of a purchase in order units and in money, and the orders that bring it. */
  record Bought(Purchase purchase, BigDecimal packs, Money amount, List<String> orders) {}

  /**
   * Returns one job's part where {@code jobs} share the lot.
   *
   * @param all what the whole lot needs, summed up once for all of them
   */
  static JobPart of(Lot lot, double all, List<Portion> portions, int jobs, List<Bought> bought) {
    OwnUnit unit = portions.get(0).unit();
    double part = unit.toBase(unit.fromBase(needed(portions)));
    double fraction = jobs == 1 ? 1 : all > 0 ? part / all : 1.0 / jobs;
    return new JobPart(lot, portions, fraction, bought);
  }

  private static double needed(List<Portion> portions) {
    return portions.stream().mapToDouble(Portion::needed).sum();
  }

  Job job() {
    return portions.get(0).job();
  }

  OwnUnit unit() {
    return portions.get(0).unit();
  }

  /** Returns the job's net, in its own unit. */
  double net() {
    return unit().fromBase(portions.stream().mapToDouble(Portion::net).sum());
  }

  /** Returns the net with its allowance, in the job's own unit. */
  double allowed() {
    return unit().fromBase(needed(portions));
  }

  /** Returns the job's share of what a purchase meets, in its own unit. */
  double needed(Purchase purchase) {
    double met =
        switch (lot.planning()) {
          case STRIPS -> purchase.totalPacks().doubleValue() * purchase.held();
          case COUNTED, CUT, BY_POUR, SERVICE -> purchase.needed();
        };
    return unit().fromBase(met * fraction);
  }

  /** Returns each of {@link Lot#jobs}' share, by need, of order units; they add up to the total. */
  static List<BigDecimal> shares(Lot lot, BigDecimal total) {
    List<Double> weights = lot.weights();
    if (weights.size() == 1) {
      return List.of(total);
    }
    return Shares.of(total, Math.max(total.scale(), SHARE_DECIMALS), weights).stream()
        .map(BigDecimal::stripTrailingZeros)
        .map(share -> share.scale() < 0 ? share.setScale(0) : share)
        .toList();
  }
}
