package org.pourbook.book.out;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.pourbook.desk.Estimate;

/** The order workbook of an estimate. */
public final class OrderWorkbook {

  private static final String TITLE = "Order workbook";

  private OrderWorkbook() {}

  /**
   * Writes the order workbook to a {@code .xlsx} file, or one CSV a sheet into a folder; whole or
   * not at all.
   *
   * @param overwrite whether an older output may be replaced
   * @throws java.nio.file.FileAlreadyExistsException if the target exists and may not be replaced
   * @throws IOException if the target cannot be written
   */
  public static void write(Estimate estimate, Path target, boolean overwrite) throws IOException {
    WorkbookFile.write(OrderSheets.of(estimate), paper(estimate), TITLE, target, overwrite);
  }

  /** Returns whether the order workbook of an estimate holds the plans of its jobs. */
  public static boolean holdsPlans(Estimate estimate) {
    return PlansSheet.holds(estimate.takeOffs().size());
  }

  static Paper paper(Estimate estimate) {
    return new Paper(!BatchUnits.of(estimate.batch().jobs()).us(), footer(estimate));
  }

  private static String footer(Estimate estimate) {
    List<String> jobs = estimate.takeOffs().stream().map(takeOff -> takeOff.job().code()).toList();
    return jobs.size() == 1 ? TITLE + ", job " + jobs.get(0) : TITLE + ", " + jobs.size() + " jobs";
  }
}
