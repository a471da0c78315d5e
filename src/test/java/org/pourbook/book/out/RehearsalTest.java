package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;

/** What is set up while jobs are worked out. */
class RehearsalTest {

  private static Set<String> kindsOfParts(List<Sheet> sheets) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    WorkbookFile.write(sheets, new Paper(false, ""), "Title", out);
    Set<String> kinds = new TreeSet<>();
    try (ZipInputStream parts = new ZipInputStream(new ByteArrayInputStream(out.toByteArray()))) {
      for (ZipEntry part = parts.getNextEntry(); part != null; part = parts.getNextEntry()) {
        kinds.add(part.getName().replaceAll("\\d+", ""));
      }
    }
    return kinds;
  }

  @Test
  void everyKindOfPartOfAnOrderWorkbookIsRehearsed() throws IOException {
    assertEquals(
        kindsOfParts(OrderSheets.of(DemoEstimate.both())), kindsOfParts(Rehearsal.sheets()));
  }

  private static boolean isGoingOn() {
    return Thread.getAllStackTraces().keySet().stream()
        .anyMatch(thread -> thread.getName().equals("rehearsal"));
  }

  @Test
  void theWorksResultComesBackWhenTheRehearsalIsOver() {
    assertEquals("done", Rehearsal.during(() -> "done"));
    assertTrue(!isGoingOn(), "over");
  }

  @Test
  void aFailureOfTheWorkIsPassedOnWhenTheRehearsalIsOver() {
    assertThrows(
        IllegalStateException.class,
        () ->
            Rehearsal.during(
                () -> {
                  throw new IllegalStateException("of the work");
                }));
    assertTrue(!isGoingOn(), "over");
  }
}
