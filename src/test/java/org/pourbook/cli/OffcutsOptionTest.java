package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code estimate --offcuts}: what one order leaves is cut by the next. */
class OffcutsOptionTest {

  @TempDir Path folder;
  private String err = "";

  private int estimate(Object... more) {
    StringWriter errText = new StringWriter();
    Object[] all = new Object[more.length + 4];
    all[0] = "estimate";
    all[1] = "demo-data/jobs";
    all[2] = "--prices";
    all[3] = "demo-data/prices";
    System.arraycopy(more, 0, all, 4, more.length);
    int status =
        Main.commandLine()
            .setOut(new PrintWriter(new StringWriter()))
            .setErr(new PrintWriter(errText))
            .execute(Arrays.stream(all).map(Object::toString).toArray(String[]::new));
    err = errText.toString();
    return status;
  }

  private List<String> rows(String output, String sheet) throws IOException {
    return Files.readAllLines(folder.resolve(output).resolve(sheet + ".csv"));
  }

  @Test
  void anOrderWorkbookIsReadAsTheListOfItsOwnOffcuts() throws IOException {
    Path first = folder.resolve("first.xlsx");
    assertEquals(0, estimate("-o", first), err);
    assertEquals(0, estimate("--offcuts", first, "-o", folder.resolve("next")), err);
    assertTrue(
        rows("next", "Cut list").stream().anyMatch(row -> row.contains(",on hand,")),
        "offcuts are cut");
    assertTrue(rows("next", "Basis").stream().anyMatch(row -> row.contains("first.xlsx")), "named");
    assertEquals(0, estimate("--offcuts", folder.resolve("next"), "-o", folder.resolve("third")));
  }

  @Test
  void anInputIsNotWrittenOverAndABadRowIsNamed() throws IOException {
    Path list = folder.resolve("yard.csv");
    Files.writeString(list, "Material,Size,Stock length,Pieces\nform board,2x4,9'-5\",none\n");
    assertEquals(4, estimate("--offcuts", list, "-o", list, "--overwrite"), err);
    assertEquals(3, estimate("--offcuts", list, "-o", folder.resolve("order.xlsx")));
    assertTrue(err.contains("yard.csv!D2: found none; expected a whole number above zero"), err);
  }
}
