package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.pourbook.cut.CutResult;
import org.pourbook.job.Job;
import org.pourbook.measure.Money;

/** The cut plans of what was chosen. */
final class CutSheets {

  private CutSheets() {}

  static List<CutSheet> of(List<Choice> choices) {
    List<CutSheet> sheets = new ArrayList<>();
    for (Choice choice : choices) {
      choice.option().plan().ifPresent(plan -> sheets.add(sheet(choice.lot(), plan)));
    }
    return sheets;
  }

  private static CutSheet sheet(Lot lot, CutResult.Planned plan) {
    return new CutSheet(
        lot.jobs().stream().map(Job::code).toList(),
        lot.jobs().get(0).units(),
        lot.key(),
        plan.patterns(),
        plan.divisions(),
        micros(plan.costMicros()),
        micros(plan.boundMicros()),
        plan.isProven(),
        micros(plan.anywhereMicros()));
  }

  private static Money micros(long micros) {
    return Money.rounded(BigDecimal.valueOf(micros, 6));
  }
}
