package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a figure to what it rests on: rules, settings, the cells of the input. */
class LinksTest {

  private static final Pattern LINK =
      Pattern.compile("HYPERLINK\\(\"#'?([^'!]+)'?!A(\\d+)(?::[A-Z]+(\\d+))?\",\"[^\"]+\"\\)");

  @TempDir static Path folder;
  private static Path demo;

  /** Rows of a sheet, from 0. */
  private record To(String sheet, int first, int last) {}

  @BeforeAll
  static void writeTheDemo() throws IOException {
    demo = DemoOrder.write(folder.resolve("demo.xlsx"));
  }

  /**
   * What the builder asks for has no rule, and rules of matching tickets are another workbook's.
   */
  private static boolean isRule(String rule) {
    return rule.matches("[A-Z]+-\\d+") && !rule.startsWith("TICK-");
  }

  private static To to(Cell cell) {
    assertEquals(CellType.FORMULA, cell.getCellType(), cell.getAddress() + " " + cell);
    Matcher link = LINK.matcher(cell.getCellFormula());
    assertTrue(link.matches(), cell.getCellFormula());
    int first = Integer.parseInt(link.group(2)) - 1;
    int last = link.group(3) == null ? first : Integer.parseInt(link.group(3)) - 1;
    return new To(link.group(1), first, last);
  }

  @Test
  void everyQuantityLeadsToItsRuleItsSettingsAndItsRowOfTheInput() throws IOException {
    try (XSSFWorkbook workbook = SpreadsheetProgram.open(demo)) {
      Headed takeoff = Headed.of(workbook.getSheet("Takeoff"));
      Headed rules = Headed.of(workbook.getSheet("Rules"));
      Headed basis = Headed.of(workbook.getSheet("Basis"));
      int withSettings = 0;
      for (Row row : takeoff.rows()) {
        String rule = takeoff.text(row, "Rule");
        if (isRule(rule)) {
          To toRule = to(takeoff.cell(row, "Rule"));
          assertEquals(rule, rules.text(rules.sheet().getRow(toRule.first()), "Rule"));
        }
        To given = to(takeoff.cell(row, "Given"));
        Headed input = Headed.of(workbook.getSheet(given.sheet()));
        String job = takeoff.text(row, "Job");
        String heading = input.at().containsKey("Job") ? "Job" : "Job*";
        assertEquals(job, input.text(input.sheet().getRow(given.first()), heading));
        if (!takeoff.text(row, "Settings").isEmpty()) {
          To settings = to(takeoff.cell(row, "Settings"));
          assertEquals("Basis", settings.sheet());
          for (int at : new int[] {settings.first(), settings.last()}) {
            assertEquals(job, basis.text(basis.sheet().getRow(at), "Job"));
            assertEquals(rule, basis.text(basis.sheet().getRow(at), "Rule"));
          }
          withSettings++;
        }
      }
      assertTrue(withSettings > 100, "only " + withSettings);
    }
  }

  @Test
  void everySettingLeadsToARuleWithItsStanding() throws IOException {
    try (XSSFWorkbook workbook = SpreadsheetProgram.open(demo)) {
      Headed basis = Headed.of(workbook.getSheet("Basis"));
      Headed rules = Headed.of(workbook.getSheet("Rules"));
      int settings = 0;
      for (Row row : basis.rows()) {
        if (isRule(basis.text(row, "Rule"))) {
          Row there = rules.sheet().getRow(to(basis.cell(row, "Rule")).first());
          assertEquals(basis.text(row, "Rule"), rules.text(there, "Rule"));
          settings++;
        }
      }
      assertTrue(settings > 300, "only " + settings);
    }
  }

  @Test
  void everyPublishedRuleNamesItsSourceAndWhatIsFromMemorySaysSo() throws IOException {
    try (XSSFWorkbook workbook = SpreadsheetProgram.open(demo)) {
      Headed rules = Headed.of(workbook.getSheet("Rules"));
      Set<String> unread = documentsFromMemory();
      int fromMemory = 0;
      for (Row row : rules.rows()) {
        String standing = rules.text(row, "Standing");
        String source = rules.text(row, "Source");
        boolean named = !source.isEmpty();
        if (unread.stream().anyMatch(source::startsWith)) {
          assertEquals("from memory", standing, () -> rules.text(row, "Rule") + ": " + source);
          fromMemory++;
        }
        assertTrue(
            named || !standing.equals("published"),
            () -> rules.text(row, "Rule") + " " + rules.text(row, "Says") + ": " + standing);
        assertTrue(
            standing.matches("published|from memory|common practice"),
            () -> rules.text(row, "Rule") + ": " + standing);
      }
      assertTrue(fromMemory > 10, "only " + fromMemory);
    }
  }

  /** Documents of which sources.md says that nobody read them for this: {@code from memory}. */
  private static Set<String> documentsFromMemory() throws IOException {
    Set<String> documents = new HashSet<>();
    for (String line : Files.readAllLines(Path.of("src/site/markdown/sources.md"))) {
      String[] cells = line.split("\\s*\\|\\s*");
      if (cells.length == 4 && cells[3].equals("from memory")) {
        documents.add(cells[2].replace("*", ""));
      }
    }
    return documents;
  }

  @Test
  void everyMaterialLeadsToItsQuantities() throws IOException {
    try (XSSFWorkbook workbook = SpreadsheetProgram.open(demo)) {
      Headed materials = Headed.of(workbook.getSheet("Materials"));
      Headed takeoff = Headed.of(workbook.getSheet("Takeoff"));
      Set<Integer> led = new HashSet<>();
      for (Row row : materials.rows()) {
        To why = to(materials.cell(row, "Why"));
        assertEquals("Takeoff", why.sheet());
        for (int at = why.first(); at <= why.last(); at++) {
          assertEquals(bought(materials, row), bought(takeoff, takeoff.sheet().getRow(at)));
          led.add(at);
        }
      }
      Set<List<String>> materialsOf = new HashSet<>();
      materials.rows().forEach(row -> materialsOf.add(bought(materials, row)));
      for (Row row : takeoff.rows()) {
        boolean isBought = materialsOf.contains(bought(takeoff, row));
        assertEquals(isBought, led.contains(row.getRowNum()), "Takeoff row " + row.getRowNum());
      }
      assertTrue(led.size() > 100, "only " + led.size());
    }
  }

  private static List<String> bought(Headed table, Row row) {
    return List.of(table.text(row, "Job"), table.text(row, "Material"), table.text(row, "Size"));
  }
}
