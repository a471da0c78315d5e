package org.pourbook.book.out;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.pourbook.job.Kind;
import org.pourbook.job.Setting;
import org.pourbook.ticket.Learned;

/** What was learnt of waste, as rows of Practice that an estimate takes. */
public final class LearnedPractice {

  private static final double LEAST_PERCENT = 0;
  private static final double MOST_PERCENT = 100;

  private LearnedPractice() {}

  private record Row(String setting, BigDecimal percent, String notes) {}

  /**
   * Writes the rows to a {@code .csv} file or a workbook, whole or not at all.
   *
   * @throws java.nio.file.FileAlreadyExistsException if the target exists and may not be replaced
   * @throws IOException if the target cannot be written
   */
  public static void write(List<Learned> learned, Path target, boolean overwrite)
      throws IOException {
    SheetSpec<Row> sheet =
        SheetSpec.portrait(
            "Practice",
            "Learnt from delivered concrete; estimate takes it with --practice.",
            List.of(
                Column.text("Job", 12, row -> ""),
                Column.text("Setting", 26, Row::setting),
                Column.cell("Value", Look.PERCENT, 10, row -> Cell.of(row.percent())),
                Column.text("Notes", 50, Row::notes)),
            rows(learned));
    if (target.toString().toLowerCase(Locale.ROOT).endsWith(".csv")) {
      WholeOutput.file(
          target,
          overwrite,
          out -> out.write(CsvFolder.text(sheet).getBytes(StandardCharsets.UTF_8)));
    } else {
      WorkbookFile.write(
          List.of(sheet), new Paper(false, "Learned"), "Learned practice", target, overwrite);
    }
  }

  private static List<Row> rows(List<Learned> learned) {
    List<Row> rows = new ArrayList<>();
    boolean[] piers = {false, true};
    for (boolean pier : piers) {
      List<Learned> those =
          learned.stream().filter(row -> row.kind().equals(Kind.PIER.label()) == pier).toList();
      if (!those.isEmpty()) {
        rows.add(row(pier ? Setting.WASTE_ALLOWANCE_PIER : Setting.WASTE_ALLOWANCE, those));
      }
    }
    return rows;
  }

  private static Row row(Setting setting, List<Learned> those) {
    double net = those.stream().mapToDouble(Learned::netM3).sum();
    double delivered = those.stream().mapToDouble(Learned::deliveredM3).sum();
    int pours = those.stream().mapToInt(Learned::pours).sum();
    double percent = 100 * (delivered / net - 1);
    return new Row(
        setting.label(),
        BigDecimal.valueOf(StrictMath.min(MOST_PERCENT, StrictMath.max(LEAST_PERCENT, percent)))
            .setScale(1, RoundingMode.HALF_UP),
        "Learnt from " + pours + (pours == 1 ? " pour" : " pours"));
  }
}
