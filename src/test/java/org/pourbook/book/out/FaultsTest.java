package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An order workbook on a disk that fills up: the older output stays, and nothing else does. */
class FaultsTest {

  private static final String OLDER = "an older order";

  /** The first writes, the last ones, and so many between are tried. */
  private static final int TRIED = 12;

  @TempDir Path folder;
  private Path outputs;
  private Path temporary;
  private Path target;
  private List<Sheet> sheets;
  private Paper paper;

  @BeforeEach
  void anOlderOrder() throws IOException {
    outputs = Files.createDirectory(folder.resolve("outputs"));
    temporary = Files.createDirectory(folder.resolve("temporary"));
    target = Files.writeString(outputs.resolve("order.xlsx"), OLDER);
    sheets = OrderSheets.of(DemoEstimate.both());
    paper = OrderWorkbook.paper(DemoEstimate.both());
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private void write(int soundWrites) throws IOException {
    WholeOutput.file(
        target,
        true,
        out -> WorkbookFile.write(sheets, paper, "Order", new FaultyStream(out, soundWrites)));
  }

  private void isAsBefore(String fault) throws IOException {
    assertEquals(List.of("order.xlsx"), names(outputs), fault);
    assertEquals(OLDER, Files.readString(target), fault);
    assertEquals(List.of(), names(temporary), fault);
  }

  /** Returns which of so many are tried. */
  private static IntStream tried(int of) {
    return IntStream.range(0, of)
        .filter(i -> i < TRIED || i >= of - TRIED || i % Math.max(1, of / TRIED) == 0);
  }

  @Test
  void aFaultAtAnyWriteOfTheOutputLeavesTheOlderOne() throws IOException {
    FaultyStream whole = new FaultyStream(OutputStream.nullOutputStream(), Integer.MAX_VALUE);
    WorkbookFile.write(sheets, paper, "Order", whole);
    assertTrue(whole.writes() > 100, "writes " + whole.writes());
    for (int sound : tried(whole.writes()).toArray()) {
      FileSystemException fault =
          assertThrows(FileSystemException.class, () -> write(sound), "write " + sound);
      assertEquals(FaultyStream.FULL, fault.getReason(), "write " + sound);
      isAsBefore("write " + sound);
    }
    write(Integer.MAX_VALUE);
    assertTrue(Files.size(target) > OLDER.length(), "without a fault it is replaced");
  }

  @Test
  void aFaultInTheTemporaryFileLeavesTheOlderOne() throws IOException {
    assumeTrue(Files.exists(Path.of("/dev/full")), "no device that is full");
    for (int inMemory : new int[] {0, 1, 10_000, 100_000}) {
      FileSystemException told =
          assertThrows(FileSystemException.class, () -> writeSpooled(inMemory, this::full));
      assertTrue(told.getReason().contains("disk full"), told.getReason());
      isAsBefore(inMemory + " bytes in memory");
    }
    writeSpooled(10_000, this::sound);
    assertTrue(Files.size(target) > OLDER.length(), "without a fault it is replaced");
    assertEquals(List.of(), names(temporary));
  }

  private void writeSpooled(int inMemory, Callable<FileChannel> files) throws IOException {
    WholeOutput.file(
        target,
        true,
        out -> {
          try (Spool spool = new Spool(inMemory, files)) {
            WorkbookFile.write(sheets, paper, "Order", out, spool);
          }
        });
  }

  private FileChannel sound() throws IOException {
    return Spool.opened(Files.createTempFile(temporary, "rows", ""));
  }

  private FileChannel full() throws IOException {
    return FileChannel.open(Path.of("/dev/full"), StandardOpenOption.WRITE);
  }

  @Test
  void aFaultInAFolderOfCsvFilesLeavesNoFolder() throws IOException {
    Path order = outputs.resolve("order");
    assertThrows(
        FileSystemException.class,
        () ->
            WholeOutput.folder(
                order,
                false,
                part -> {
                  CsvFolder.write(sheets, part);
                  throw new IOException(FaultyStream.FULL);
                }));
    isAsBefore("folder");
  }
}
