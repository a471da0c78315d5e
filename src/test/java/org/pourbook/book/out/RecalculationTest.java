package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.CellValue;
import org.apache.poi.ss.usermodel.FormulaEvaluator;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The demo's order workbook worked out by two programs of others, as it is and after an office has
 * changed prices, an allowance, a waste and sizes; the latter beside the tool's own run on an input
 * with the same changes.
 */
class RecalculationTest {

  /** Floating sums are added up in another order. */
  private static final double SAME = 1e-9;

  /** What the changes reach by live cells alone. */
  private static final List<String> MUST_FOLLOW =
      List.of(
          "BAKERY FLOOR plan slab 3500 psi, Amount",
          "BAKERY FLOOR turned-down edge 3500 psi, Amount",
          "BAKERY FLOOR compacted base , Amount",
          "BAKERY FLOOR formed sides , Amount",
          "BAKERY base gravel clean stone QC-CS, Needed",
          "BAKERY concrete 3500 psi QC-35, Needed",
          "BAKERY concrete 3500 psi QC-35, Packs",
          "BAKERY concrete 3500 psi QC-35, Amount",
          "BAKERY curing compound  AO-CC5, Needed",
          "PAVILION PAD compacted base , Amount",
          "PAVILION base gravel clean stone QC-CS, Needed",
          "EXTENSION concrete 3000 psi QC-30, Packs",
          "EXTENSION form screw 2-1/2 in AO-FS25, Needed",
          "EXTENSION, Total");

  @TempDir Path folder;

  private Path order(String jobs, String prices, String name) throws IOException {
    return DemoOrder.write(Path.of(jobs), Path.of(prices), folder.resolve(name));
  }

  private Path demo() throws IOException {
    return order("demo-data/jobs", "demo-data/prices", "demo.xlsx");
  }

  @Test
  void anEvaluatorGivesEveryStoredValueOfTheDemo() throws IOException {
    Compared compared = new Compared();
    try (XSSFWorkbook workbook = SpreadsheetProgram.open(demo())) {
      FormulaEvaluator evaluator = workbook.getCreationHelper().createFormulaEvaluator();
      for (Sheet sheet : workbook) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              CellValue value = evaluator.evaluate(cell);
              String where = sheet.getSheetName() + "!" + cell.getAddress() + " " + cell;
              assertEquals(cell.getCachedFormulaResultType(), value.getCellType(), where);
              compared.add(where, cell, text(value), value.getNumberValue());
            }
          }
        }
      }
    }
    compared.tell("the evaluator");
  }

  private static String text(CellValue value) {
    return value.getCellType() == CellType.STRING ? value.getStringValue() : "";
  }

  @Test
  void aSpreadsheetProgramGivesEveryStoredValueOfTheDemo() throws Exception {
    assumeTrue(SpreadsheetProgram.isOnPath(), SpreadsheetProgram.NAME + " is not on the PATH");
    Path demo = demo();
    Path again = new SpreadsheetProgram(folder).recalculated(demo);
    Compared compared = new Compared();
    try (XSSFWorkbook ours = SpreadsheetProgram.open(demo);
        XSSFWorkbook theirs = SpreadsheetProgram.open(again)) {
      for (Sheet sheet : ours) {
        for (Row row : sheet) {
          for (Cell cell : row) {
            Row there = theirs.getSheet(sheet.getSheetName()).getRow(row.getRowNum());
            Cell other = there == null ? null : there.getCell(cell.getColumnIndex());
            if (other != null && Headed.typeOf(cell) != CellType.BLANK) {
              String where = sheet.getSheetName() + "!" + cell.getAddress() + " " + cell;
              assertEquals(Headed.typeOf(cell), Headed.typeOf(other), where);
              compared.add(where, cell, Headed.words(other), number(other));
            }
          }
        }
      }
    }
    compared.tell("the program");
  }

  @Test
  void theEvaluatorAgreesWithTheToolAfterAnOfficeChangedTheWorkbook() throws Exception {
    assertAgreesWithTheTool(
        "the evaluator",
        edited -> {
          Path again = folder.resolve("evaluated.xlsx");
          try (XSSFWorkbook workbook = SpreadsheetProgram.open(edited);
              OutputStream out = Files.newOutputStream(again)) {
            workbook.getCreationHelper().createFormulaEvaluator().evaluateAll();
            workbook.write(out);
          }
          return again;
        });
  }

  @Test
  void aSpreadsheetProgramAgreesWithTheToolAfterAnOfficeChangedTheWorkbook() throws Exception {
    assumeTrue(SpreadsheetProgram.isOnPath(), SpreadsheetProgram.NAME + " is not on the PATH");
    assertAgreesWithTheTool(
        "the program", edited -> new SpreadsheetProgram(folder).recalculated(edited));
  }

  private interface Recalculation {
    Path of(Path edited) throws Exception;
  }

  private void assertAgreesWithTheTool(String who, Recalculation recalculation) throws Exception {
    Path demo = demo();
    Path edited = edited(demo);
    Path toolRun = order(changedInput("jobs"), changedInput("prices"), "rerun.xlsx");
    try (XSSFWorkbook before = SpreadsheetProgram.open(demo);
        XSSFWorkbook theirs = SpreadsheetProgram.open(recalculation.of(edited));
        XSSFWorkbook ours = SpreadsheetProgram.open(toolRun)) {
      Figures was = Figures.of(before);
      Figures live = Figures.of(theirs);
      Figures rerun = Figures.of(ours);
      for (String figure : MUST_FOLLOW) {
        assertTrue(differ(was.of(figure), rerun.of(figure)), figure + " did not change");
        assertEquals(rerun.of(figure), live.of(figure), SAME * 1000, figure);
      }
      int agreeing = 0;
      Set<String> stale = new TreeSet<>();
      double largest = 0;
      for (Map.Entry<String, Double> one : rerun.figures().entrySet()) {
        Double there = live.figures().get(one.getKey());
        if (there == null || differ(there, one.getValue())) {
          stale.add(one.getKey());
        } else {
          agreeing++;
          double off = Math.abs(there - one.getValue()) / Math.max(1, Math.abs(there));
          largest = Math.max(largest, off);
        }
      }
      System.out.println(
          who + ", edited: " + agreeing + " figures agree, largest difference " + largest);
      System.out.println(who + ", edited: not live: " + stale);
      stale.forEach(figure -> assertTrue(!was.isLive(figure), figure + " says that it is live"));
      assertEquals("look", light(theirs, "PAVILION"));
      assertEquals("ok", light(theirs, "BARN"));
      String all = theirs.getSheet("Summary").getRow(0).getCell(2).getStringCellValue();
      assertTrue(all.startsWith("look: "), all);
    }
  }

  /** A price, an allowance, a waste and sizes, the latter as text and as numbers. */
  private Path edited(Path demo) throws IOException {
    Path edited = folder.resolve("edited.xlsx");
    try (XSSFWorkbook workbook = SpreadsheetProgram.open(demo);
        OutputStream out = Files.newOutputStream(edited)) {
      Headed given = Headed.of(workbook.getSheet("Given Sections"));
      for (Row row : given.rows()) {
        switch (given.text(row, "Job") + " " + given.text(row, "Section")) {
          case "BAKERY FLOOR" -> {
            given.fresh(row, "Width").setCellValue("27'-6\"");
            given.fresh(row, "Edge depth (in)").setCellValue(20);
          }
          case "BAKERY OVEN" -> given.fresh(row, "Thickness (in)").setCellValue("13\"");
          case "PAVILION PAD" -> given.fresh(row, "Length").setCellValue(13);
          case "EXTENSION FLOOR" -> given.fresh(row, "Waste %").setCellValue(20);
          default -> {}
        }
      }
      Headed materials = Headed.of(workbook.getSheet("Materials"));
      for (Row row : materials.rows()) {
        if (materials.text(row, "Item").equals("QC-35")) {
          materials.cell(row, "Unit price").setCellValue(170.25);
        }
        boolean extension = materials.text(row, "Job").equals("EXTENSION");
        if (extension && materials.text(row, "Material").equals("form screw")) {
          materials.cell(row, "Allowance %").setCellValue(60);
        }
      }
      workbook.write(out);
    }
    return edited;
  }

  /** Returns a folder of the demo's input with the same changes. */
  private String changedInput(String name) throws IOException {
    Path to = Files.createDirectories(folder.resolve("changed-" + name));
    try (var files = Files.list(Path.of("demo-data", name))) {
      for (Path file : files.toList()) {
        String text = Files.readString(file);
        text = text.replace("1,1,\"40'-0\"\"\",\"26'-0\"\"\"", "1,1,\"40'-0\"\"\",\"27'-6\"\"\"");
        text =
            text.replace(
                "PAD,slab,outside,1,1,\"12'-0\"\"\"", "PAD,slab,outside,1,1,\"13'-0\"\"\"");
        text =
            text.replace(
                "EXTENSION,Waste allowance,12",
                "EXTENSION,\"Allowance, form screw\",60,\nEXTENSION,Waste allowance,20");
        text = text.replace(",,5,,0,0,,,18,12,all", ",,5,,0,0,,,20,12,all");
        text = text.replace("\"2'-0\"\"\",,12,FLOOR", "\"2'-0\"\"\",,13,FLOOR");
        text = text.replace("yd3,,164.50", "yd3,,170.25");
        Files.writeString(to.resolve(file.getFileName().toString()), text);
      }
    }
    return to.toString();
  }

  private static String light(XSSFWorkbook workbook, String job) {
    Headed checks = Headed.of(workbook.getSheet("Checks"));
    return checks.rows().stream()
        .filter(row -> checks.text(row, "Job").equals(job))
        .filter(row -> checks.text(row, "Check").startsWith("Given cells"))
        .map(row -> checks.text(row, "Light"))
        .findFirst()
        .orElseThrow();
  }

  /** What a workbook makes of the jobs, by name; and whether it says that it is live. */
  private record Figures(Map<String, Double> figures, Set<String> notLive) {
    static Figures of(XSSFWorkbook workbook) {
      Figures all = new Figures(new HashMap<>(), new HashSet<>());
      Headed takeoff = Headed.of(workbook.getSheet("Takeoff"));
      for (Row row : takeoff.rows()) {
        String job = takeoff.text(row, "Job");
        String name =
            job + " " + takeoff.text(row, "Section") + " " + takeoff.text(row, "Quantity");
        all.put(takeoff, row, name + " " + takeoff.text(row, "Size"), "Amount");
        if (takeoff.text(row, "Live").equals("no")) {
          all.notLive.add(name + " " + takeoff.text(row, "Size") + ", Amount");
          all.notLive.add(
              job + " " + takeoff.text(row, "Material") + " " + takeoff.text(row, "Size"));
        }
      }
      Headed materials = Headed.of(workbook.getSheet("Materials"));
      for (Row row : materials.rows()) {
        String need =
            materials.text(row, "Job")
                + " "
                + materials.text(row, "Material")
                + " "
                + materials.text(row, "Size");
        for (String heading : List.of("Needed", "Packs", "Amount")) {
          String name = need + " " + materials.text(row, "Item");
          all.put(materials, row, name, heading);
          if (all.notLive.contains(need) || materials.text(row, "Live").equals("no")) {
            all.notLive.add(name + ", " + heading);
          }
        }
      }
      Headed summary = Headed.of(workbook.getSheet("Summary"));
      for (Row row : summary.rows()) {
        String job = summary.text(row, "Job");
        all.put(summary, row, job, "Total");
        boolean live = job.equals("EXTENSION") || job.equals("BARN");
        if (!live) {
          all.notLive.add(job + ", Total");
        }
      }
      return all;
    }

    private void put(Headed sheet, Row row, String name, String heading) {
      Cell cell = sheet.cell(row, heading);
      if (Headed.typeOf(cell) == CellType.NUMERIC) {
        figures.put(name + ", " + heading, cell.getNumericCellValue());
      }
    }

    double of(String figure) {
      return Objects.requireNonNull(figures.get(figure), figure);
    }

    /** A row that only the changed input has, such as stakes of another length, was not there. */
    boolean isLive(String figure) {
      return figures.containsKey(figure) && !notLive.contains(figure);
    }
  }

  private static boolean differ(double one, double other) {
    return Math.abs(one - other) > SAME * 100 * Math.max(1, Math.abs(one));
  }

  private static final class Compared {
    private int cells;
    private int formulas;
    private double largest;

    void add(String where, Cell ours, String text, double number) {
      cells++;
      formulas += ours.getCellType() == CellType.FORMULA ? 1 : 0;
      if (Headed.typeOf(ours) == CellType.NUMERIC) {
        double stored = ours.getNumericCellValue();
        double off = Math.abs(stored - number) / Math.max(1, Math.abs(stored));
        largest = Math.max(largest, off);
        assertTrue(off <= SAME, where + ": stored " + stored + ", worked out " + number);
      } else {
        assertEquals(Headed.words(ours), text, where);
      }
    }

    void tell(String who) {
      System.out.println(
          who + ": " + cells + " cells, " + formulas + " formulas, largest difference " + largest);
      assertTrue(formulas > 1000, "only " + formulas + " formulas");
    }
  }

  private static double number(Cell cell) {
    return Headed.typeOf(cell) == CellType.NUMERIC ? cell.getNumericCellValue() : Double.NaN;
  }
}
