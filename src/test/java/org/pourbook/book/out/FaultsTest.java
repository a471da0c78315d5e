package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An order workbook on a disk that fills up: the older output stays, and nothing else does. */
class FaultsTest {

  private static final String OLDER = "an older order";

  /** A chart and a table: few enough writes to try each. */
  private static final Set<String> SOME = Set.of("Summary", "Loads");

  /** Bytes of a write, fewer than a file's usual ones. */
  private static final int BLOCK = 2048;

  /** Bytes of rows in memory: a few rows. */
  private static final int LITTLE = 1_000;

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

  /** Writes in blocks, of which so many are sound; returns how many. */
  private int write(int soundWrites) throws IOException {
    FaultyStream[] opened = new FaultyStream[1];
    WholeOutput.file(
        target,
        true,
        out -> {
          opened[0] = new FaultyStream(out, soundWrites);
          OutputStream blocks = new BufferedOutputStream(opened[0], BLOCK);
          WorkbookFile.write(sheets, paper, "Order", blocks);
          blocks.flush();
        });
    return opened[0].writes();
  }

  private void isAsBefore(String fault) throws IOException {
    assertEquals(List.of("order.xlsx"), names(outputs), fault);
    assertEquals(OLDER, Files.readString(target), fault);
    assertEquals(List.of(), names(temporary), fault);
  }

  private void keepSome() {
    sheets = sheets.stream().filter(sheet -> SOME.contains(sheet.name())).toList();
    assertEquals(SOME.size(), sheets.size());
  }

  @Test
  void aFaultAtEachWriteLeavesTheOlderOne() throws IOException {
    int writes = write(FaultyStream.NEVER);
    assertTrue(writes > 20, "writes " + writes);
    assertTrue(Files.size(target) > OLDER.length(), "without a fault it is replaced");
    Files.writeString(target, OLDER);
    for (int sound = 0; sound < writes; sound++) {
      int faulty = sound;
      FileSystemException fault =
          assertThrows(FileSystemException.class, () -> write(faulty), "write " + sound);
      assertEquals(FaultyStream.FULL, fault.getReason(), "write " + sound);
      isAsBefore("write " + sound);
    }
  }

  @Test
  void aFaultAtEachWriteOfTheTemporaryFileLeavesTheOlderOne() throws IOException {
    keepSome();
    int writes = writeSpooled(FaultyStream.NEVER).writes();
    assertTrue(writes > 5, "writes " + writes);
    assertTrue(Files.size(target) > OLDER.length(), "without a fault it is replaced");
    Files.writeString(target, OLDER);
    for (int sound = 0; sound < writes; sound++) {
      int faulty = sound;
      FileSystemException told =
          assertThrows(FileSystemException.class, () -> writeSpooled(faulty), "write " + sound);
      assertTrue(told.getReason().contains("disk full"), told.getReason());
      isAsBefore("write " + sound + " of the temporary file");
    }
  }

  /** Writes the sheets, whose rows lie in a temporary file of so many sound writes. */
  private FaultyFile writeSpooled(int soundWrites) throws IOException {
    Path rows = temporary.resolve("rows");
    FaultyFile[] opened = new FaultyFile[1];
    WholeOutput.file(
        target,
        true,
        out -> {
          try (Spool spool =
              new Spool(
                  LITTLE,
                  () ->
                      opened[0] =
                          new FaultyFile(Spool.opened(Files.createFile(rows)), soundWrites))) {
            WorkbookFile.write(sheets, paper, "Order", out, spool);
          }
        });
    return opened[0];
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
