package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands as a shell sees them: exit status, standard output, standard error. */
class CommandLineTest extends CommandRuns {

  @TempDir Path folder;

  private Path jobs;

  @BeforeEach
  void copyJobs() throws IOException, URISyntaxException {
    jobs = Files.createDirectory(folder.resolve("two-jobs"));
    Path from = Path.of(CommandLineTest.class.getResource("/cli/two-jobs").toURI());
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.toList()) {
        Files.copy(file, jobs.resolve(file.getFileName().toString()));
      }
    }
  }

  private void leaveOnlyGoodJob() throws IOException {
    Path sheet = jobs.resolve("Jobs.csv");
    Files.write(sheet, Files.readAllLines(sheet).subList(0, 2));
    Path sections = jobs.resolve("Sections.csv");
    Files.write(sections, Files.readAllLines(sections).subList(0, 2));
  }

  private List<String> namesInFolder() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void plansAreDrawnAsOneFileAJobTheSameEachTime() throws Exception {
    leaveOnlyGoodJob();
    Path plans = folder.resolve("plans");
    assertEquals(0, run("estimate", jobs, "--plans", plans), err);
    byte[] first = Files.readAllBytes(plans.resolve("GOOD.svg"));
    assertEquals(0, run("estimate", jobs, "--plans", plans, "--overwrite"), err);

    assertArrayEquals(first, Files.readAllBytes(plans.resolve("GOOD.svg")));
    var svg =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(plans.resolve("GOOD.svg").toFile());
    assertEquals("svg", svg.getDocumentElement().getTagName());
    assertTrue(svg.getElementsByTagName("line").getLength() > 4);
  }

  @Test
  void aCallThatNamesACommandDeclaresThatOneAlone() {
    assertEquals(Set.of("check"), Main.commandLine("check", "x").getSubcommands().keySet());
    Set<String> all = Main.commandLine("help", "check").getSubcommands().keySet();
    assertEquals(10, all.size(), all.toString());
    assertEquals(all, Main.commandLine("chek").getSubcommands().keySet());
    assertEquals(all, Main.commandLine().getSubcommands().keySet());
  }

  @Test
  void aCommandSaysTheSameOfItselfNamedAndAsked() {
    assertEquals(0, run("estimate", "--help"));
    String named = out;
    assertEquals(0, run("help", "estimate"));
    assertEquals(named, out);
    assertEquals(2, run("estimat", "x.xlsx"));
    assertTrue(err.contains("pourbook estimate"), err);
  }

  /** Writes that many jobs of one section each. */
  private void writeAlike(int count) throws IOException {
    for (String name : List.of("Jobs.csv", "Sections.csv")) {
      List<String> lines = Files.readAllLines(jobs.resolve(name));
      List<String> alike = new ArrayList<>(lines.subList(0, 1));
      for (int i = 1; i <= count; i++) {
        alike.add(lines.get(1).replaceFirst("^[^,]+", "J" + i));
      }
      Files.write(jobs.resolve(name), alike);
    }
  }

  private boolean hasPlans(String workbook) throws IOException {
    try (Workbook read = WorkbookFactory.create(folder.resolve(workbook).toFile(), null, true)) {
      return read.getSheet("Plans") != null;
    }
  }

  @Test
  void aBatchOfMoreThanFiftyJobsHasNoPlansAndSaysSo() throws IOException {
    writeAlike(50);
    assertEquals(0, run("estimate", jobs, "-o", folder.resolve("fifty.xlsx")), err);
    assertTrue(hasPlans("fifty.xlsx"));
    assertFalse(err.contains("plans"), err);
    writeAlike(51);
    assertEquals(0, run("estimate", jobs, "-o", folder.resolve("more.xlsx")), err);
    assertFalse(hasPlans("more.xlsx"));
    assertTrue(err.contains("so many plans stand in no workbook; draw them with --plans"), err);
  }

  @Test
  void aSoundJobIsEstimatedBesideItsInput() throws IOException {
    leaveOnlyGoodJob();
    assertEquals(0, run("estimate", jobs), err);
    assertTrue(Files.isRegularFile(folder.resolve("two-jobs-order.xlsx")));
    assertTrue(out.startsWith("1 job, total "), out);
  }

  @Test
  void theInputIsNotTouched() throws IOException {
    byte[] before = Files.readAllBytes(jobs.resolve("Sections.csv"));
    run("estimate", jobs);
    assertArrayEquals(before, Files.readAllBytes(jobs.resolve("Sections.csv")));
  }

  @Test
  void fiveBadCellsOfOneJobAreFiveProblemsAndTheOtherJobIsEstimated() {
    assertEquals(3, run("estimate", jobs));
    List<String> refused =
        err.lines().filter(line -> line.endsWith("(job left out)")).map(this::place).toList();
    assertEquals(
        List.of(
            "Jobs.csv!C3",
            "Sections.csv!D3",
            "Sections.csv!E4",
            "Sections.csv!F5",
            "Sections.csv!H5"),
        refused,
        err);
    assertTrue(out.startsWith("1 job, total "), out);
  }

  private String place(String line) {
    return line.substring(0, line.indexOf(':'));
  }

  @Test
  void checkWritesNothingAndTellsTheSame() throws IOException {
    assertEquals(3, run("check", jobs));
    assertTrue(out.startsWith("1 sound job, 5 problems"), out);
    assertEquals(List.of("two-jobs"), namesInFolder());
  }

  @Test
  void noUsableJobWritesNothing() throws IOException {
    Path sheet = jobs.resolve("Jobs.csv");
    List<String> lines = Files.readAllLines(sheet);
    Files.write(sheet, List.of(lines.get(0), lines.get(2)));
    assertEquals(4, run("estimate", jobs));
    assertEquals(List.of("two-jobs"), namesInFolder());
  }

  @Test
  void anOlderOutputIsKeptUnlessOverwriteIsSaid() throws IOException {
    leaveOnlyGoodJob();
    Path older = folder.resolve("two-jobs-order.xlsx");
    Files.writeString(older, "older");
    assertEquals(4, run("estimate", jobs));
    assertEquals("older", Files.readString(older));
    assertTrue(err.contains("--overwrite"), err);
    assertEquals(0, run("estimate", jobs, "--overwrite"), err);
    assertTrue(Files.size(older) > 1000);
  }

  @Test
  void anInputIsNeverWrittenOver() throws IOException {
    leaveOnlyGoodJob();
    Path prices = jobs.resolve("Prices.csv");
    String before = Files.readString(prices);
    assertEquals(4, run("estimate", jobs, "--prices", prices, "-o", prices, "--overwrite"));
    assertEquals(before, Files.readString(prices));
  }

  @Test
  void anOutputBelowAFileIsOneSentence() throws IOException {
    leaveOnlyGoodJob();
    Path file = Files.writeString(folder.resolve("file"), "x");
    assertEquals(4, run("estimate", jobs, "-o", file.resolve("order.xlsx")));
    assertEquals(1, err.lines().count(), err);
    assertEquals(List.of("file", "two-jobs"), namesInFolder());
  }

  @Test
  void anOutputThatIsNoWorkbookByItsNameIsRefused() throws IOException {
    leaveOnlyGoodJob();
    for (String name : List.of("order.xls", "order.pdf", "order.CSV")) {
      assertEquals(4, run("estimate", jobs, "-o", folder.resolve(name)), name);
      assertTrue(err.contains("an output is an .xlsx workbook, or a folder that exists"), err);
    }
    assertEquals(List.of("two-jobs"), namesInFolder());
  }

  @Test
  void aMissingFileIsOneSentence() {
    assertEquals(4, run("estimate", folder.resolve("nowhere.xlsx")));
    assertEquals(1, err.lines().count(), err);
    assertTrue(err.contains("nowhere.xlsx"), err);
  }

  @Test
  void aFileThatIsNoWorkbookIsOneSentence() throws IOException {
    Path file = folder.resolve("jobs.xlsx");
    Files.write(file, "Job,Section".getBytes(StandardCharsets.UTF_8));
    assertEquals(4, run("estimate", file));
    assertEquals(1, err.lines().count(), err);
    Files.write(file, new byte[0]);
    assertEquals(4, run("estimate", file));
    assertEquals(1, err.lines().count(), err);
    assertEquals(List.of("jobs.xlsx", "two-jobs"), namesInFolder());
  }

  @Test
  void aWrongCommandLineIsStatusTwo() {
    assertEquals(2, run());
    assertEquals(2, run("estimate"));
    assertEquals(2, run("estimate", jobs, "--no-such-option"));
    assertEquals(2, run("template", "--units", "cubits"));
    assertEquals("", out);
  }

  @Test
  void helpAndVersionGoToStandardOutput() {
    assertEquals(0, run("--version"));
    assertTrue(out.startsWith("pourbook "), out);
    assertEquals(0, run("estimate", "--help"));
    assertTrue(out.contains("--prices"), out);
    assertEquals("", err);
  }

  @Test
  void aTemplateIsASoundJobsWorkbook() throws IOException {
    for (String units : List.of("ft-in", "m")) {
      Path template = folder.resolve("blank-" + units + ".xlsx");
      assertEquals(0, run("template", "--units", units, "-o", template), err);
      assertEquals(0, run("check", template), err);
      assertFalse(err.contains("note"), err);
    }
  }

  @Test
  void quietSaysNothingOfWhatWentWell() throws IOException {
    leaveOnlyGoodJob();
    assertEquals(0, run("estimate", jobs, "--quiet"));
    assertEquals("", out);
    assertEquals("", err);
  }

  @Test
  void aKerfOrCutStepThatNoSawHasIsAProblemAtItsCell() throws IOException {
    leaveOnlyGoodJob();
    Files.writeString(
        jobs.resolve("Practice.csv"), "Setting,Value\nSaw kerf,3\nCut step,0\nKeep offcuts,-1\n");
    assertEquals(4, run("check", jobs), err);
    assertEquals(
        List.of("Practice.csv!B2", "Practice.csv!B3", "Practice.csv!B4"),
        err.lines().filter(line -> line.startsWith("Practice")).map(this::place).toList());
  }
}
