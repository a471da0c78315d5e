package org.pourbook.desk;

import java.util.List;
import org.pourbook.buy.Compared;
import org.pourbook.buy.Quotation;
import org.pourbook.problem.Problem;

/**
 * Quotations of one request compared: everything that the comparison workbook holds.
 *
 * @param quotations one a supplier
 * @param problems of reading them
 * @param files that were read
 * @param version of the tool
 */
public record Comparison(
    List<Quotation> quotations,
    Compared compared,
    List<Problem> problems,
    List<Batch.InputFile> files,
    String version) {
  public Comparison {
    quotations = List.copyOf(quotations);
    problems = List.copyOf(problems);
    files = List.copyOf(files);
  }
}
