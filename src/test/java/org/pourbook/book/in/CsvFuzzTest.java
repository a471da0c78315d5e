package org.pourbook.book.in;

import static org.junit.jupiter.api.Assertions.assertNotNull;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** A folder of CSV files in which one holds any bytes: read, or refused with a sentence. */
class CsvFuzzTest {

  private static final Path FOLDER = folder();

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

  @FuzzTest(maxDuration = "3m")
  void read(byte[] bytes) throws IOException {
    Files.write(FOLDER.resolve("Sections.csv"), bytes);
    try {
      assertNotNull(JobsReader.read(FOLDER, Optional.empty()));
    } catch (UnreadableFile refused) {
      assertNotNull(refused.getMessage());
    }
  }
}
