package org.pourbook.book.in;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.junit.jupiter.api.Test;
import org.pourbook.book.FormulaGuard;
import org.pourbook.desk.Batch;
import org.pourbook.job.GivenSheet;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.job.GivenSheet.GivenRow;
import org.pourbook.job.Job;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem;

/**
 * A folder of CSV files in which one holds any bytes: read, or refused with a sentence. What is
 * read of it, written and read again, is the same.
 */
class CsvFuzzTest {

  /** Rows below a blank one and cells under no heading are told and not held: none is written. */
  private static final List<String> NOT_HELD =
      List.of("a row below the end of the table", "something beside the table");

  private static final Path FOLDER = folder();
  private static final Path AGAIN = folder();

  private static Path folder() {
    try {
      Path folder = Files.createTempDirectory("csv");
      Files.writeString(folder.resolve("Jobs.csv"), "Job,Mix\nA,3000 psi\nB,\n");
      folder.toFile().deleteOnExit();
      return folder;
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** So that what is fuzzed is near to a file that is read. */
  @Test
  void theSoundFileIsRead() throws IOException {
    try (InputStream sound =
        Objects.requireNonNull(
            CsvFuzzTest.class.getResourceAsStream("CsvFuzzTestInputs/read/sound"))) {
      Files.write(FOLDER.resolve("Sections.csv"), sound.readAllBytes());
    }
    Section section =
        JobsReader.read(FOLDER, Optional.empty()).value().jobs().get(0).sections().get(0);

    Length length = Length.ofInches(589, 2); // 24'-6 1/2"
    assertEquals(new Shape.Rectangle(length, Length.ofFeet(20)), section.shape());
    assertEquals("#4", section.bars().orElseThrow().along().designation());
  }

  @FuzzTest(maxDuration = "1m")
  void read(byte[] bytes) throws IOException {
    Files.write(FOLDER.resolve("Sections.csv"), bytes);
    Checked<Batch> read;
    try {
      read = JobsReader.read(FOLDER, Optional.empty());
    } catch (UnreadableFile refused) {
      String sentence = String.valueOf(refused.getMessage());
      assertTrue(sentence.contains("Sections"), sentence);
      return;
    }
    boolean whole = Collections.disjoint(said(read), NOT_HELD);
    for (GivenSheet sheet : read.value().given()) {
      if (sheet.name().equals("Sections") && whole) {
        Files.writeString(AGAIN.resolve("Sections.csv"), written(sheet));
        isTheSame(read, JobsReader.read(AGAIN, Optional.empty()));
      }
    }
  }

  private static void isTheSame(Checked<Batch> first, Checked<Batch> again) {
    assertEquals(cells(first), cells(again));
    assertEquals(codes(first), codes(again));
    assertEquals(said(first), said(again));
  }

  private static List<List<List<GivenCell>>> cells(Checked<Batch> read) {
    return read.value().given().stream()
        .map(sheet -> sheet.rows().stream().map(GivenRow::cells).toList())
        .toList();
  }

  private static List<String> codes(Checked<Batch> read) {
    return read.value().jobs().stream().map(Job::code).toList();
  }

  /** The same in other rows: blank ones are not written. */
  private static List<String> said(Checked<Batch> read) {
    return read.problems().stream().map(Problem::found).sorted().toList();
  }

  private static String written(GivenSheet sheet) {
    List<List<String>> rows = new ArrayList<>(List.of(sheet.headings()));
    for (GivenRow row : sheet.rows()) {
      rows.add(row.cells().stream().map(CsvFuzzTest::text).toList());
    }
    StringBuilder text = new StringBuilder();
    for (List<String> row : rows) {
      Object[] guarded = row.stream().map(FormulaGuard::guarded).toArray();
      text.append(CSVFormat.RFC4180.format(guarded)).append("\r\n");
    }
    assertFalse(text.isEmpty());
    return text.toString();
  }

  private static String text(GivenCell cell) {
    return cell instanceof GivenCell.Text text ? text.text() : "";
  }
}
