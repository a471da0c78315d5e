package org.pourbook.desk;

import java.time.LocalDate;
import java.util.List;
import org.pourbook.buy.Quoted;
import org.pourbook.buy.Supplier;
import org.pourbook.problem.Problem;

/**
 * A supplier's quotation: everything that the quotation workbook holds.
 *
 * @param batch the jobs asked for, with this supplier's list
 * @param request SHA-256 of what was asked, in hexadecimal
 * @param problems of the input and of the stock, sorted by place
 * @param version of the tool
 */
public record Quote(
    Batch batch,
    Supplier supplier,
    LocalDate date,
    LocalDate validUntil,
    String request,
    Quoted quoted,
    List<Problem> problems,
    String version) {
  public Quote {
    problems = List.copyOf(problems);
  }
}
