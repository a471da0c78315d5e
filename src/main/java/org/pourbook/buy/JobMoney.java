package org.pourbook.buy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.pourbook.job.Job;
import org.pourbook.measure.Money;

/** What each job pays: its lines, and its shares of fees and tax. */
final class JobMoney {

  private JobMoney() {}

  /** Returns one a job, in the batch's order; their totals add up to the orders'. */
  static List<JobTotals> of(List<Job> jobs, List<Line> lines, List<OrderDraft> drafts) {
    Map<String, Money> fees = new HashMap<>();
    Map<String, Money> tax = new HashMap<>();
    for (OrderDraft draft : drafts) {
      draft.feesByJob().forEach((job, share) -> fees.merge(job, share, Money::plus));
      draft.taxByJob().forEach((job, share) -> tax.merge(job, share, Money::plus));
    }
    Map<String, List<Line>> byJob = new HashMap<>();
    lines.forEach(line -> byJob.computeIfAbsent(line.job(), k -> new ArrayList<>()).add(line));
    return jobs.stream()
        .map(
            job ->
                totals(
                    job.code(),
                    byJob.getOrDefault(job.code(), List.of()),
                    fees.getOrDefault(job.code(), Money.ZERO),
                    tax.getOrDefault(job.code(), Money.ZERO)))
        .toList();
  }

  private static JobTotals totals(String job, List<Line> lines, Money fees, Money tax) {
    Money materials = amount(lines, false);
    Money services = amount(lines, true);
    int unpriced = (int) lines.stream().filter(line -> line.price().isEmpty()).count();
    Money total = materials.plus(services).plus(fees).plus(tax);
    return new JobTotals(job, materials, services, fees, tax, total, unpriced);
  }

  private static Money amount(List<Line> lines, boolean service) {
    return Money.sum(
        lines.stream()
            .filter(line -> line.service() == service)
            .flatMap(line -> line.amount().stream())
            .toList());
  }
}
