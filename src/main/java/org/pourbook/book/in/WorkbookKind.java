package org.pourbook.book.in;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.pourbook.book.InputSheet;

/** Tells jobs workbooks from the others that lie in a folder. */
public final class WorkbookKind {

  private WorkbookKind() {}

  /**
   * Returns whether a file has the sheets of a jobs workbook and is no order workbook; also where
   * it cannot be read, so that who reads it says why.
   */
  public static boolean isJobs(Path file) {
    List<String> names;
    try {
      names = InputFiles.read(file, (name, all) -> false).names();
    } catch (UnreadableFile e) {
      return true;
    }
    return !InputBook.isOrderWorkbook(names)
        && has(names, InputSheet.JOBS)
        && has(names, InputSheet.SECTIONS);
  }

  private static boolean has(List<String> names, InputSheet sheet) {
    return names.stream().map(InputSheet::named).anyMatch(Optional.of(sheet)::equals);
  }
}
