package org.pourbook.book.out;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.pourbook.desk.Reconciled;
import org.pourbook.job.Job;

/** The reconciliation workbook of an order and its tickets. */
public final class ReconciliationWorkbook {

  private static final String TITLE = "Reconciliation";

  private ReconciliationWorkbook() {}

  /**
   * Writes the workbook to a {@code .xlsx} file, or one CSV a sheet into a folder; whole or not at
   * all.
   *
   * @throws java.nio.file.FileAlreadyExistsException if the target exists and may not be replaced
   * @throws IOException if the target cannot be written
   */
  public static void write(Reconciled reconciled, Path target, boolean overwrite)
      throws IOException {
    List<Job> jobs = reconciled.order().batch().jobs();
    boolean metric = !jobs.isEmpty() && jobs.stream().allMatch(job -> job.units().isMetric());
    WorkbookFile.write(
        sheets(reconciled, metric), new Paper(metric, TITLE), TITLE, target, overwrite);
  }

  private static List<Sheet> sheets(Reconciled reconciled, boolean metric) {
    return List.of(
        TicketSheets.findings(reconciled.result()),
        TicketSheets.matched(reconciled.result()),
        TicketSheets.loads(reconciled.result()),
        TicketSheets.learned(reconciled.result(), metric),
        RecordSheets.problems(reconciled.result().problems()),
        RecordSheets.basis(reconciled));
  }
}
