package org.pourbook.book.out;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.poi.ooxml.POIXMLProperties.CoreProperties;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes sheets as a workbook: the same bytes for the same sheets, whole or not at all. */
final class WorkbookFile {

  private static final String ENDING = ".xlsx";

  /** A file says when it was made; ours says this, so that its bytes do not change. */
  private static final Instant MADE = Instant.parse("2026-01-01T00:00:00Z");

  private WorkbookFile() {}

  /**
   * Writes the sheets as a workbook where the name ends in {@code .xlsx}, else as a folder of CSV
   * files.
   */
  static void write(List<Sheet> sheets, Paper paper, String title, Path target, boolean overwrite)
      throws IOException {
    if (target.toString().toLowerCase(Locale.ROOT).endsWith(ENDING)) {
      writeWorkbook(sheets, paper, title, target, overwrite);
    } else {
      WholeOutput.folder(target, overwrite, folder -> CsvFolder.write(sheets, folder));
    }
  }

  /** Writes the sheets as a workbook, whatever the file is called. */
  static void writeWorkbook(
      List<Sheet> sheets, Paper paper, String title, Path target, boolean overwrite)
      throws IOException {
    WholeOutput.file(target, overwrite, out -> write(sheets, paper, title, out));
  }

  static void write(List<Sheet> tables, Paper paper, String title, OutputStream out)
      throws IOException {
    try (Spool spool = new Spool()) {
      write(tables, paper, title, out, spool);
    }
  }

  /** Writes the sheets as a workbook, with their rows kept in a spool that is empty. */
  static void write(List<Sheet> tables, Paper paper, String title, OutputStream out, Spool spool)
      throws IOException {
    List<Sheet> sheets = tables.stream().flatMap(table -> table.sheets().stream()).toList();
    try (XSSFWorkbook workbook = new XSSFWorkbook()) {
      Styles styles = new Styles(workbook);
      List<XSSFSheet> made =
          sheets.stream().map(sheet -> workbook.createSheet(sheet.name())).toList();
      SheetRows rows = new SheetRows(spool);
      for (int i = 0; i < sheets.size(); i++) {
        Rows written = new Rows(styles, spool);
        sheets.get(i).writeTo(made.get(i), written, paper);
        written.end();
        made.get(i).getCTWorksheet().getDimension().setRef(written.area());
        rows.endOf(made.get(i));
      }
      CoreProperties properties = workbook.getProperties().getCoreProperties();
      properties.setCreator("pourbook");
      properties.setTitle(title);
      properties.setCreated(Optional.of(Date.from(MADE)));
      properties.setModified(Optional.of(Date.from(MADE)));
      rows.writeWith(workbook, out);
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }
}
