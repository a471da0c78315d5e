package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.List;
import org.pourbook.job.Job;
import org.pourbook.measure.Money;

/** A job's part of a lot. */
record JobPart(Job job, Lot lot, List<Bought> bought) {

  /** Decimals of a job's share of order units. */
  private static final int SHARE_DECIMALS = 6;

  /** The job's share of a purchase in money, and the orders that bring it. */
  record Bought(Purchase purchase, Money amount, List<String> orders) {}

  OwnUnit unit() {
    return lot.portionsOf(job).get(0).unit();
  }

  /** Returns the job's net, in its own unit. */
  double net() {
    return unit().fromBase(lot.portionsOf(job).stream().mapToDouble(Portion::net).sum());
  }

  /** Returns the net with its allowance, in the job's own unit. */
  double allowed() {
    return unit().fromBase(lot.portionsOf(job).stream().mapToDouble(Portion::needed).sum());
  }

  /** Returns how much of the lot is this job's, by need. */
  private double fraction() {
    if (lot.jobs().size() == 1) {
      return 1;
    }
    double all = lot.needed();
    return all > 0 ? unit().toBase(allowed()) / all : 1.0 / lot.jobs().size();
  }

  /** Returns the job's share of what a purchase meets, in its own unit. */
  double needed(Purchase purchase) {
    double met =
        switch (lot.planning()) {
          case STRIPS -> purchase.totalPacks().doubleValue() * purchase.held();
          case COUNTED, CUT, BY_POUR, SERVICE -> purchase.needed();
        };
    return unit().fromBase(met * fraction());
  }

  /** Returns the job's share of the order units; shares add up to the order's. */
  BigDecimal packs(Purchase purchase) {
    return share(lot, job, purchase.totalPacks());
  }

  /** Returns a job's share, by need, of order units for a lot. */
  static BigDecimal share(Lot lot, Job job, BigDecimal total) {
    List<Job> jobs = lot.jobs();
    if (jobs.size() == 1) {
      return total;
    }
    int scale = Math.max(total.scale(), SHARE_DECIMALS);
    for (int i = 0; i < jobs.size(); i++) {
      if (jobs.get(i).code().equals(job.code())) {
        BigDecimal share = Shares.of(total, scale, lot.weights()).get(i).stripTrailingZeros();
        return share.scale() < 0 ? share.setScale(0) : share;
      }
    }
    throw new IllegalStateException(job.code() + " has no part of " + lot.key());
  }
}
