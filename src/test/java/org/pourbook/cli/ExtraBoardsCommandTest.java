package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Boards that a builder asks for by length or by count, beside those of the forms. */
class ExtraBoardsCommandTest extends CommandRuns {

  @TempDir Path folder;

  @Test
  void theyAreAmongThePiecesThatTheCutListIsCheckedAgainst() throws IOException {
    Path jobs = Files.createDirectories(folder.resolve("jobs"));
    try (Stream<Path> files = Files.list(Path.of("demo-data/jobs"))) {
      for (Path file : files.toList()) {
        Files.copy(file, jobs.resolve(file.getFileName().toString()));
      }
    }
    Files.writeString(
        jobs.resolve("Extras.csv"),
        "Job,What,Size,Quantity,Unit,Kind\n"
            + "PAVILION,form board,2x4,50,ft,material\n"
            + "PAVILION,form board,2x6,3,each,material\n");
    Path order = folder.resolve("order");
    assertEquals(0, run("estimate", jobs, "--prices", "demo-data/prices", "-o", order), () -> err);
    boolean looked = false;
    for (CSVRecord row : ReviseCommandTest.sheet(order, "Checks")) {
      assertEquals("ok", row.get("Light"), row.toString());
      looked |= row.get("Check").startsWith("Cut list, Pieces");
    }
    assertTrue(looked, "the pieces are checked");
  }
}
