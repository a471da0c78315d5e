package org.pourbook.book.in;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.pourbook.desk.Batch;
import org.pourbook.job.Job;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem.Effect;

/**
 * A small workbook in which one part holds any bytes: read, or refused with a sentence that names
 * it; no job is both read and refused. The first byte, a digit, says which part; after any other
 * first byte the bytes are the whole file.
 */
class WorkbookFuzzTest {

  private static final String MAIN =
      "xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"";
  private static final String OFFICE =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
  private static final String TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.";

  private static final Map<String, String> SOUND = sound();
  private static final List<String> PARTS = List.copyOf(SOUND.keySet());

  private static Map<String, String> sound() {
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put(
        "xl/worksheets/sheet1.xml",
        sheet(
            "<row r='1'><c t='inlineStr'><is><t>Job</t></is></c><c t='s'><v>0</v></c></row>"
                + "<row r='2'><c t='inlineStr'><is><t>A</t></is></c><c t='s'><v>1</v></c></row>"));
    parts.put(
        "xl/worksheets/sheet2.xml",
        sheet(
            "<row r='1'>"
                + text("Job")
                + text("Section")
                + text("Length")
                + text("Width")
                + text("Thickness (in)")
                + "</row><row r='2'>"
                + text("A")
                + text("F")
                + "<c r='C2' s='1'><v>9</v></c><c t='str'><f>D1</f><v>9"
                + " ft</v></c><c><v>4</v></c></row>"));
    parts.put(
        "xl/sharedStrings.xml",
        "<sst " + MAIN + "><si><t>Mix</t></si><si><r><t>3000 psi</t></r></si></sst>");
    parts.put(
        "xl/styles.xml",
        "<styleSheet "
            + MAIN
            + "><numFmts count='1'><numFmt numFmtId='164' formatCode='0.0%'/></numFmts>"
            + "<cellXfs count='2'><xf numFmtId='0'/><xf numFmtId='0'/></cellXfs></styleSheet>");
    parts.put(
        "xl/workbook.xml",
        "<workbook "
            + MAIN
            + " xmlns:r='"
            + OFFICE
            + "'><sheets><sheet name='Jobs' sheetId='1' r:id='a'/>"
            + "<sheet name='Sections' sheetId='2' r:id='b'/></sheets></workbook>");
    parts.put(
        "xl/_rels/workbook.xml.rels",
        relations(
            relation("a", "worksheet", "worksheets/sheet1.xml")
                + relation("b", "worksheet", "worksheets/sheet2.xml")
                + relation("c", "sharedStrings", "sharedStrings.xml")
                + relation("d", "styles", "styles.xml")));
    parts.put("_rels/.rels", relations(relation("a", "officeDocument", "xl/workbook.xml")));
    parts.put(
        "[Content_Types].xml",
        "<Types xmlns='"
            + PACKAGE
            + "content-types'><Default Extension='rels'"
            + " ContentType='application/vnd.openxmlformats-package.relationships+xml'/>"
            + type("workbook", "sheet.main")
            + type("worksheets/sheet1", "worksheet")
            + type("worksheets/sheet2", "worksheet")
            + type("sharedStrings", "sharedStrings")
            + type("styles", "styles")
            + "</Types>");
    return parts;
  }

  private static String sheet(String rows) {
    return "<worksheet " + MAIN + "><sheetData>" + rows + "</sheetData></worksheet>";
  }

  private static String text(String text) {
    return "<c t='inlineStr'><is><t>" + text + "</t></is></c>";
  }

  private static String relations(String relations) {
    return "<Relationships xmlns='" + PACKAGE + "relationships'>" + relations + "</Relationships>";
  }

  private static String relation(String id, String kind, String target) {
    return "<Relationship Id='"
        + id
        + "' Type='"
        + OFFICE
        + "/"
        + kind
        + "' Target='"
        + target
        + "'/>";
  }

  private static String type(String part, String kind) {
    return "<Override PartName='/xl/" + part + ".xml' ContentType='" + TYPE + kind + "+xml'/>";
  }

  private static void write(Path file, byte[] bytes) throws IOException {
    int part = bytes.length == 0 ? -1 : bytes[0] - '0';
    if (part < 0 || part >= PARTS.size()) {
      Files.write(file, bytes);
      return;
    }
    byte[] other = Arrays.copyOfRange(bytes, 1, bytes.length);
    try (OutputStream bare = Files.newOutputStream(file);
        ZipOutputStream out = new ZipOutputStream(bare)) {
      out.setLevel(0);
      for (Map.Entry<String, String> entry : SOUND.entrySet()) {
        out.putNextEntry(new ZipEntry(entry.getKey()));
        boolean replaced = entry.getKey().equals(PARTS.get(part));
        out.write(replaced ? other : entry.getValue().getBytes(StandardCharsets.UTF_8));
        out.closeEntry();
      }
    }
  }

  /** So that what is fuzzed is near to a workbook that is read. */
  @Test
  void theWorkbookIsSoundBeforeAPartIsReplaced() throws IOException {
    Path file = Files.createTempFile("workbook", ".xlsx");
    try {
      for (int part = 0; part < PARTS.size(); part++) {
        write(file, (part + SOUND.get(PARTS.get(part))).getBytes(StandardCharsets.UTF_8));
        Checked<Batch> read = JobsReader.read(file, Optional.empty());
        assertEquals(1, read.value().jobs().size(), read.problems().toString());
        Section section = read.value().jobs().get(0).sections().get(0);
        assertEquals(new Shape.Rectangle(Length.ofFeet(9), Length.ofFeet(9)), section.shape());
        assertEquals(Length.ofInches(4), section.thickness());
        assertEquals("3000 psi", section.mix());
      }
    } finally {
      Files.delete(file);
    }
  }

  @FuzzTest(maxDuration = "1m")
  void read(byte[] bytes) throws IOException {
    Path file = Files.createTempFile("workbook", ".xlsx");
    try {
      write(file, bytes);
      Checked<Batch> read = JobsReader.read(file, Optional.empty());
      for (Job job : read.value().jobs()) {
        boolean refused =
            read.problems().stream()
                .anyMatch(p -> p.effect() == Effect.JOB_LEFT_OUT && p.job().equals(job.code()));
        assertFalse(refused, job.code() + " is left out: " + read.problems());
        assertFalse(job.sections().isEmpty(), job.code());
      }
    } catch (UnreadableFile refused) {
      String sentence = String.valueOf(refused.getMessage());
      assertTrue(sentence.contains(file.toString()), sentence);
    } finally {
      Files.delete(file);
    }
  }
}
