package org.pourbook.book.out;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.pourbook.book.out.RecordSheets.Fact;

/** Leads from a quantity to the settings of its rule that were in force for its job. */
final class BasisLinks {

  private static final int PRINTED = 5;

  private final SheetSpec<Fact> basis;
  private final Map<String, OfJob> jobs = new HashMap<>();

  /**
   * The rows of a job's settings.
   *
   * @param rules where each rule's stand, counted from 0 at the job's first: mostly the same for
   *     all jobs, which then share it
   */
  private record OfJob(int first, Map<String, Span> rules) {}

  /**
   * Makes the links.
   *
   * @param basis a job's settings on one sheet
   */
  BasisLinks(SheetSpec<Fact> basis) {
    this.basis = basis;
    Map<Map<String, Span>, Map<String, Span>> alike = new HashMap<>();
    List<Fact> facts = basis.rows();
    int next;
    for (int first = 0; first < facts.size(); first = next) {
      String job = facts.get(first).job();
      Map<String, Span> rules = new HashMap<>();
      for (next = first; next < facts.size() && facts.get(next).job().equals(job); next++) {
        String rule = facts.get(next).rule();
        if (!rule.isEmpty()) {
          Span here = new Span(next - first, next - first);
          rules.merge(rule, here, (before, now) -> new Span(before.first(), now.last()));
        }
      }
      int row = SheetSpec.FIRST_ROW + first;
      jobs.put(job, new OfJob(row, alike.computeIfAbsent(rules, same -> same)));
    }
  }

  /** Returns a link to the settings, from the first of that rule to the last; blank for none. */
  Cell link(String job, String rule) {
    OfJob ofJob = jobs.get(job);
    Span there = ofJob == null ? null : ofJob.rules().get(rule);
    if (ofJob == null || there == null) {
      return Cell.BLANK;
    }
    Span rows = new Span(ofJob.first() + there.first(), ofJob.first() + there.last());
    int first = basis.rowInSheet(rows.first());
    int last = basis.rowInSheet(rows.last());
    String text = "Basis " + first + (first == last ? "" : "–" + last);
    return Cell.formula(
        "HYPERLINK(\"#" + basis.place(rows, PRINTED) + "\",\"" + text + "\")", text);
  }
}
