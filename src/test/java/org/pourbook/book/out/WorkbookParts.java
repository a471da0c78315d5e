package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** A workbook's parts inflated: the deflated bytes depend on the machine's zip library. */
final class WorkbookParts {

  private WorkbookParts() {}

  static void assertSame(Path written, Path kept) throws IOException {
    Map<String, String> now = of(written);
    Map<String, String> before = of(kept);
    assertEquals(now.keySet(), before.keySet(), kept.toString());
    now.forEach(
        (part, text) -> assertTrue(text.equals(before.get(part)), kept + " differs in " + part));
  }

  private static Map<String, String> of(Path workbook) throws IOException {
    Map<String, String> parts = new TreeMap<>();
    try (ZipFile zip = new ZipFile(workbook.toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        byte[] bytes = zip.getInputStream(entry).readAllBytes();
        parts.put(entry.getName(), new String(bytes, StandardCharsets.UTF_8));
      }
    }
    return parts;
  }
}
