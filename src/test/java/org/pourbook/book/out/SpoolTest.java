package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is spooled comes back, wherever it was kept. */
class SpoolTest {

  @TempDir Path folder;

  @Test
  void bytesComeBackFromMemoryAndFromAFile() throws IOException {
    byte[] all = new byte[300_000];
    new SplittableRandom(7).nextBytes(all);
    for (int inMemory : new int[] {0, 1, 4_000, 150_000, 299_999, 300_000}) {
      Path file = folder.resolve("rows-" + inMemory);
      try (Spool spool = new Spool(inMemory, () -> Spool.opened(Files.createFile(file)))) {
        for (int at = 0; at < all.length; at += 7_001) {
          spool.write(all, at, Math.min(7_001, all.length - at));
        }
        assertEquals(all.length, spool.size(), "bytes in memory " + inMemory);
        for (int from : new int[] {0, 1, 65_536, 299_999, 300_000}) {
          for (int to : new int[] {from, 300_000}) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            spool.copy(from, to, out);
            assertArrayEquals(
                Arrays.copyOfRange(all, from, to),
                out.toByteArray(),
                inMemory + ": " + from + " to " + to);
          }
        }
      }
      assertFalse(Files.exists(file), "bytes in memory " + inMemory);
    }
  }
}
