package org.pourbook.cli;

import java.nio.file.Path;
import java.util.List;
import org.pourbook.buy.JobTotals;
import org.pourbook.desk.Estimate;
import org.pourbook.desk.Revised;
import org.pourbook.measure.Money;

/** The one line that says what a command did. */
final class Told {

  private Told() {}

  /** Returns {@code 6 jobs, total 48231.17 USD, written to spring-order.xlsx.} */
  static String of(Estimate estimate, Path target) {
    List<JobTotals> totals = estimate.bought().totals();
    Money total = Money.sum(totals.stream().map(JobTotals::total).toList());
    int unpriced = totals.stream().mapToInt(JobTotals::unpriced).sum();
    String lacking =
        unpriced == 0 ? "" : " (incomplete: " + count(unpriced, "line") + " without a price)";
    return count(totals.size(), "job")
        + ", total "
        + total
        + " "
        + estimate.batch().prices().currency()
        + lacking
        + ", written to "
        + target
        + ".";
  }

  /** Returns {@code 4 changes, 182.40 besides, 20.00 back, new total 48393.57 USD, …} */
  static String of(Revised revised, Path target) {
    List<Revised.JobRevision> totals = revised.totals();
    int unpriced = totals.stream().mapToInt(Revised.JobRevision::unpriced).sum();
    String lacking =
        unpriced == 0 ? "" : " (incomplete: " + count(unpriced, "line") + " without a price)";
    return count(revised.changes().size(), "change")
        + ", "
        + Money.sum(totals.stream().map(Revised.JobRevision::besides).toList())
        + " ordered besides, "
        + Money.sum(totals.stream().map(Revised.JobRevision::back).toList())
        + " to send back, new total "
        + Money.sum(totals.stream().map(Revised.JobRevision::total).toList())
        + " "
        + revised.estimate().batch().prices().currency()
        + lacking
        + ", written to "
        + target
        + ".";
  }

  /** Returns a number with its noun, {@code 1 job}, {@code 2 jobs}. */
  static String count(long number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }
}
