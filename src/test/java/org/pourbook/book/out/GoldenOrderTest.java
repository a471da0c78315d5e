package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/** The order workbook cell by cell; the dump found is left in {@code target/golden}. */
class GoldenOrderTest {

  private static final Path GOLDEN = Path.of("src/test/resources/org/pourbook/book/out/order.txt");

  /** Enough lines to see what differs. */
  private static final int SHOWN = 12;

  @TempDir Path folder;

  @Test
  void theWorkbookOfASmallEstimateIsTheGoldenOne() throws IOException {
    Path file = folder.resolve("order.xlsx");
    RulesSheet rules = new RulesSheet(List.of(TwoRules.class), Documents.read());
    WorkbookFile.write(
        OrderSheets.of(DemoEstimate.both(), rules),
        OrderWorkbook.paper(DemoEstimate.both()),
        "golden",
        file,
        false);
    try (var in = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      List<String> found = Dump.of(workbook);
      Path dump = Path.of("target/golden/order.txt");
      Files.createDirectories(dump.getParent());
      Files.write(dump, found);
      List<String> golden = Files.readAllLines(GOLDEN);
      assertEquals(List.of(), without(golden, found), "in the golden file only");
      assertEquals(List.of(), without(found, golden), "in the workbook only");
    }
  }

  private static List<String> without(List<String> lines, List<String> others) {
    List<String> rest = new ArrayList<>(lines);
    rest.removeAll(others);
    return rest.subList(0, Math.min(rest.size(), SHOWN));
  }

  /** Rules of this test's own, so that a new rule does not change the golden file. */
  static final class TwoRules {

    private TwoRules() {}

    @Source(
        rule = "CON-10",
        says = "Depths measured rule the order.",
        key = "aci-318-19",
        at = "9.9",
        standing = Standing.PUBLISHED)
    static int ten() {
      return 10;
    }

    @Source(
        rule = "CON-2",
        says = "Area times thickness.",
        value = "none",
        standing = Standing.COMMON_PRACTICE)
    static int two() {
      return 2;
    }
  }
}
