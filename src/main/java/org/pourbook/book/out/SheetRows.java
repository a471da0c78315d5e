package org.pourbook.book.out;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.HashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Rows of several sheets, kept apart from POI's workbook, which holds everything else: put into its
 * parts where these are written.
 */
final class SheetRows {

  /** The moment a zip file can tell that is the first. */
  private static final LocalDateTime FIRST = LocalDateTime.of(1980, 1, 1, 0, 0);

  /** What a part says of a sheet without rows. */
  private static final String NO_ROWS = "<sheetData/>";

  private final Spool spool;
  private final Map<String, Stretch> ofParts = new HashMap<>();
  private long end;

  /** Bytes of the spool. */
  private record Stretch(long from, long to) {}

  SheetRows(Spool spool) {
    this.spool = spool;
  }

  /** Takes what was spooled since the sheet before as this sheet's rows. */
  void endOf(XSSFSheet sheet) {
    String part = sheet.getPackagePart().getPartName().getName().substring(1);
    ofParts.put(part, new Stretch(end, spool.size()));
    end = spool.size();
  }

  /** Writes the workbook with the rows; the same bytes each time. */
  void writeWith(XSSFWorkbook workbook, OutputStream out) throws IOException {
    ByteArrayOutputStream bare = new ByteArrayOutputStream();
    workbook.write(bare);
    ZipOutputStream zip = new ZipOutputStream(out);
    try (ZipInputStream parts = new ZipInputStream(new ByteArrayInputStream(bare.toByteArray()))) {
      for (ZipEntry part = parts.getNextEntry(); part != null; part = parts.getNextEntry()) {
        ZipEntry entry = new ZipEntry(part.getName());
        entry.setTimeLocal(FIRST);
        zip.putNextEntry(entry);
        Stretch rows = ofParts.get(part.getName());
        if (rows == null) {
          parts.transferTo(zip);
        } else {
          write(new String(parts.readAllBytes(), StandardCharsets.UTF_8), rows, zip);
        }
        zip.closeEntry();
      }
    }
    zip.finish();
  }

  private void write(String sheet, Stretch rows, OutputStream out) throws IOException {
    int at = sheet.indexOf(NO_ROWS);
    if (at < 0) {
      throw new IllegalStateException("no place for rows in " + sheet);
    }
    out.write((sheet.substring(0, at) + "<sheetData>").getBytes(StandardCharsets.UTF_8));
    spool.copy(rows.from(), rows.to(), out);
    out.write(
        ("</sheetData>" + sheet.substring(at + NO_ROWS.length())).getBytes(StandardCharsets.UTF_8));
  }
}
