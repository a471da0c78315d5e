package org.pourbook.desk;

import java.util.List;
import org.pourbook.ticket.Reconciliation;

/**
 * What the bookkeeper's desk found: everything that the reconciliation workbook holds.
 *
 * @param files the order workbook's, then the tickets'
 * @param version of the tool
 */
public record Reconciled(
    OrderBook order, Reconciliation result, List<Batch.InputFile> files, String version) {
  public Reconciled {
    files = List.copyOf(files);
  }
}
