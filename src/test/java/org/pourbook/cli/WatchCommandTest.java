package org.pourbook.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WatchCommandTest {

  private static final Path JOBS = Path.of("demo-data/jobs.xlsx");
  private static final Path PRICES = Path.of("demo-data/prices.xlsx");

  @TempDir Path folder;

  private WatchedFolder watched() {
    return new WatchedFolder(folder, Optional.of(folder.resolve("prices.xlsx")));
  }

  private static void touch(Path file, long second) throws IOException {
    Files.setLastModifiedTime(file, FileTime.fromMillis(1_800_000_000_000L + second * 1000));
  }

  @Test
  void aWorkbookCountsWhenItHasNotChangedBetweenTwoLooks() throws IOException {
    WatchedFolder watched = watched();
    Path jobs = Files.copy(JOBS, folder.resolve("spring.xlsx"));
    touch(jobs, 1);
    assertEquals(List.of(), watched.saved(), "it may be half-written");
    touch(jobs, 2);
    assertEquals(List.of(), watched.saved(), "it was written meanwhile");
    assertEquals(List.of(jobs), watched.saved());
    assertEquals(List.of(), watched.saved(), "once");
    touch(jobs, 3);
    assertEquals(List.of(), watched.saved());
    assertEquals(List.of(jobs), watched.saved(), "saved again");
  }

  @Test
  void locksDraftsOrdersPricesAndOtherWorkbooksAreLeftAlone() throws IOException {
    Files.copy(JOBS, folder.resolve("~$spring.xlsx"));
    Files.copy(JOBS, folder.resolve(".~lock.spring.xlsx"));
    Files.copy(JOBS, folder.resolve("spring-order.xlsx"));
    Files.copy(JOBS, folder.resolve("spring.xlsx.part"));
    Files.copy(PRICES, folder.resolve("prices.xlsx"));
    Files.copy(Path.of("demo-data/lists/nettle-row.xlsx"), folder.resolve("list.xlsx"));
    Files.createDirectory(folder.resolve("folder.xlsx"));
    WatchedFolder watched = watched();
    watched.saved();
    assertEquals(List.of(), watched.saved());
  }

  @Test
  void whatHasANewerOrderIsDoneAlready() throws IOException {
    Path jobs = Files.copy(JOBS, folder.resolve("spring.xlsx"));
    Path order = Files.copy(JOBS, folder.resolve("spring-order.xlsx"));
    touch(jobs, 1);
    touch(order, 2);
    WatchedFolder watched = watched();
    watched.saved();
    assertEquals(List.of(), watched.saved());
    touch(jobs, 3);
    watched.saved();
    assertEquals(List.of(jobs), watched.saved());
  }

  @Test
  void aSavedWorkbookIsEstimatedBesideItselfAndADamagedOneTold() throws Exception {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int[] status = {-1};
    Thread watching =
        new Thread(
            () ->
                status[0] =
                    Main.commandLine()
                        .setOut(new PrintWriter(out, true))
                        .setErr(new PrintWriter(err, true))
                        .execute("watch", folder.toString(), "--prices", PRICES.toString()));
    watching.start();
    try {
      Files.writeString(folder.resolve("damaged.xlsx"), "PK no workbook");
      Path whole = Files.copy(JOBS, folder.resolve("spring.xlsx"));
      byte[] before = Files.readAllBytes(whole);
      await(() -> Files.exists(folder.resolve("spring-order.xlsx")));
      await(() -> err.toString().contains("damaged.xlsx"));
      assertArrayEquals(before, Files.readAllBytes(whole), "the input is never written");
      assertFalse(Files.exists(folder.resolve("damaged-order.xlsx")));
    } finally {
      watching.interrupt();
      watching.join(TimeUnit.SECONDS.toMillis(60));
    }
    assertEquals(0, status[0], err.toString());
    assertTrue(out.toString().contains("6 jobs, total "), out.toString());
  }

  private static void await(BooleanSupplier done) throws InterruptedException {
    for (int i = 0; i < 1200 && !done.getAsBoolean(); i++) {
      Thread.sleep(50);
    }
    assertTrue(done.getAsBoolean(), "not within a minute");
  }

  @Test
  void aFolderThatIsNotThereEndsWithFour() {
    StringWriter err = new StringWriter();
    assertEquals(
        4,
        Main.commandLine()
            .setErr(new PrintWriter(err, true))
            .execute("watch", folder.resolve("nothing").toString()));
    assertTrue(err.toString().contains("nothing"), err.toString());
  }

  @Test
  void aWorkbookAloneIsToBeEstimated() {
    assertArrayEquals(new String[] {"estimate", "a b.XLSX"}, Main.meant("a b.XLSX"));
    assertArrayEquals(new String[] {"check"}, Main.meant("check"));
    assertArrayEquals(new String[] {"--help"}, Main.meant("--help"));
  }

  @Test
  void theManualNamesEveryCommandAndTheCompletionIsAScript() {
    StringWriter manual = new StringWriter();
    assertEquals(0, Main.commandLine().setOut(new PrintWriter(manual)).execute("manual"));
    for (String command : Main.commandLine().getSubcommands().keySet()) {
      boolean told = manual.toString().contains("\n.SS " + command + "\n");
      assertEquals(!command.equals("help") && !command.equals("manual"), told, command);
    }
    StringWriter script = new StringWriter();
    assertEquals(
        0, Main.commandLine().setOut(new PrintWriter(script)).execute("manual", "--completion"));
    assertTrue(script.toString().startsWith("#!/usr/bin/env bash"), "a bash script");
  }
}
