package org.pourbook.book.out;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.pourbook.book.out.RecordSheets.Fact;

/** Leads from a quantity to the settings of its rule that were in force for its job. */
final class BasisLinks {

  private static final int PRINTED = 5;

  private final SheetSpec<Fact> basis;
  private final Map<String, Map<String, Span>> jobs = new HashMap<>();

  /**
   * Makes the links.
   *
   * @param basis a job's settings on one sheet
   */
  BasisLinks(SheetSpec<Fact> basis) {
    this.basis = basis;
    List<Fact> facts = basis.rows();
    for (int i = 0; i < facts.size(); i++) {
      Fact fact = facts.get(i);
      int row = SheetSpec.FIRST_ROW + i;
      if (!fact.rule().isEmpty()) {
        jobs.computeIfAbsent(fact.job(), job -> new HashMap<>())
            .merge(
                fact.rule(),
                new Span(row, row),
                (before, now) -> new Span(before.first(), now.last()));
      }
    }
  }

  /** Returns a link to the settings, from the first of that rule to the last; blank for none. */
  Cell link(String job, String rule) {
    Span rows = jobs.getOrDefault(job, Map.of()).get(rule);
    if (rows == null) {
      return Cell.BLANK;
    }
    int first = basis.rowInSheet(rows.first());
    int last = basis.rowInSheet(rows.last());
    String text = "Basis " + first + (first == last ? "" : "–" + last);
    return Cell.formula(
        "HYPERLINK(\"#" + basis.place(rows, PRINTED) + "\",\"" + text + "\")", text);
  }
}
