package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.pourbook.ForkedJava;
import org.pourbook.cli.Main;

/** What is set up while jobs are worked out. */
class RehearsalTest {

  @TempDir Path folder;

  private static Set<String> kindsOfParts(byte[] workbook) throws IOException {
    Set<String> kinds = new TreeSet<>();
    try (ZipInputStream parts = new ZipInputStream(new ByteArrayInputStream(workbook))) {
      for (ZipEntry part = parts.getNextEntry(); part != null; part = parts.getNextEntry()) {
        kinds.add(part.getName().replaceAll("\\d+", ""));
      }
    }
    return kinds;
  }

  @Test
  void everyKindOfPartOfAnOrderWorkbookIsRehearsed() throws IOException {
    ByteArrayOutputStream order = new ByteArrayOutputStream();
    List<Sheet> sheets = OrderSheets.of(DemoEstimate.both());
    WorkbookFile.write(sheets, new Paper(false, ""), "Title", order);
    ByteArrayOutputStream rehearsed = new ByteArrayOutputStream();
    assertEquals(Optional.empty(), Rehearsal.during(() -> "done", rehearsed).failure());
    assertEquals(kindsOfParts(order.toByteArray()), kindsOfParts(rehearsed.toByteArray()));
  }

  private static boolean isGoingOn() {
    return Thread.getAllStackTraces().keySet().stream()
        .anyMatch(thread -> thread.getName().equals("rehearsal"));
  }

  @Test
  void theWorksResultComesBackWhenTheRehearsalIsOver() {
    assertEquals(new Rehearsed<>("done", Optional.empty()), Rehearsal.during(() -> "done"));
    assertFalse(isGoingOn(), "over");
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
    assertFalse(isGoingOn(), "over");
  }

  /** As a class whose static initialiser fails. */
  private static OutputStream broken() {
    return new OutputStream() {
      @Override
      public void write(int b) {
        throw new ExceptionInInitializerError("of the rehearsal");
      }
    };
  }

  @Test
  void aRehearsalThatFailsHarmsNothing() throws IOException {
    Rehearsed<String> rehearsed = Rehearsal.during(() -> "done", broken());
    assertEquals("done", rehearsed.result());
    assertEquals("of the rehearsal", rehearsed.failure().orElseThrow().getMessage());
    List<String> written = new ArrayList<>();
    rehearsed.write(() -> written.add(rehearsed.result()));
    assertEquals(List.of("done"), written);
  }

  @Test
  void whereWritingFailsTooTheRehearsalsFailureIsTold() {
    Rehearsed<String> rehearsed = Rehearsal.during(() -> "done", broken());
    for (Throwable failure :
        List.of(new IOException(), new IllegalStateException(), new NoClassDefFoundError())) {
      Throwable told = assertThrows(failure.getClass(), () -> rehearsed.write(failing(failure)));
      assertSame(failure, told);
      assertEquals(List.of(rehearsed.failure().orElseThrow()), List.of(told.getSuppressed()));
    }
  }

  private static Rehearsed.Writing failing(Throwable failure) {
    return () -> {
      if (failure instanceof IOException io) {
        throw io;
      } else if (failure instanceof Error error) {
        throw error;
      }
      throw (RuntimeException) failure;
    };
  }

  /**
   * Returns whether an estimate sets up what writes workbooks, though it writes CSV files: then it
   * was for the rehearsal.
   */
  private boolean isRehearsed(int processors) throws Exception {
    Path log = folder.resolve("classes" + processors + ".txt");
    ForkedJava.Ended run =
        ForkedJava.of(
                Main.class,
                "-XX:ActiveProcessorCount=" + processors,
                "-Xlog:class+load:file=" + log + "::filecount=0")
            .run("estimate", "demo-data/jobs.xlsx", "-o", folder.resolve("csv" + processors));
    assertEquals(0, run.status(), run.said());
    try (Stream<String> lines = Files.lines(log)) {
      return lines.anyMatch(line -> line.contains(" " + XSSFWorkbook.class.getName() + " "));
    }
  }

  @Test
  void anEstimateIsRehearsedWhereThereIsASecondProcessor() throws Exception {
    assertTrue(isRehearsed(2));
    assertFalse(isRehearsed(1));
  }
}
