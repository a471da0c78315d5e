package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WholeOutputTest {

  @TempDir Path folder;

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  private static void words(OutputStream out) throws IOException {
    out.write("words".getBytes(StandardCharsets.UTF_8));
  }

  @Test
  void aDiskThatFillsUpIsASentenceThatNamesTheOutputAndLeavesNothing() throws IOException {
    Path target = folder.resolve("order.xlsx");
    FileSystemException plain =
        assertThrows(
            FileSystemException.class,
            () ->
                WholeOutput.file(
                    target,
                    false,
                    out -> {
                      words(out);
                      throw new IOException("No space left on device");
                    }));
    assertEquals(target.toString(), plain.getFile());
    assertEquals("No space left on device", plain.getReason());
    assertEquals(List.of(), names());
  }

  @Test
  void aDiskThatFillsUpInsideTheWorkbookLibraryIsTheSameSentence() throws IOException {
    Path target = folder.resolve("order.xlsx");
    FileSystemException wrapped =
        assertThrows(
            FileSystemException.class,
            () ->
                WholeOutput.file(
                    target,
                    false,
                    out -> {
                      throw new IllegalStateException(
                          "Fail to save", new IOException("No space left on device"));
                    }));
    assertEquals("No space left on device", wrapped.getReason());
    assertEquals(List.of(), names());
  }

  @Test
  void aDefectStaysADefectAndLeavesNothing() throws IOException {
    assertThrows(
        IllegalStateException.class,
        () ->
            WholeOutput.file(
                folder.resolve("order.xlsx"),
                false,
                out -> {
                  throw new IllegalStateException("a defect");
                }));
    assertEquals(List.of(), names());
  }

  @Test
  void aLinkThatPointsNowhereIsNotReplacedUnasked() throws IOException {
    Path link = Files.createSymbolicLink(folder.resolve("order.xlsx"), folder.resolve("away"));
    assertThrows(
        FileAlreadyExistsException.class,
        () -> WholeOutput.file(link, false, WholeOutputTest::words));
    assertTrue(Files.isSymbolicLink(link));
    assertEquals(List.of("order.xlsx"), names());
  }

  @Test
  void aLinkIsReplacedAndWhatItPointsToIsNotWritten() throws IOException {
    Path elsewhere = Files.writeString(folder.resolve("elsewhere"), "kept");
    Path link = Files.createSymbolicLink(folder.resolve("order.xlsx"), elsewhere);
    WholeOutput.file(link, true, WholeOutputTest::words);
    assertEquals("kept", Files.readString(elsewhere));
    assertTrue(Files.isRegularFile(link, LinkOption.NOFOLLOW_LINKS));
    assertEquals("words", Files.readString(link));
  }

  @Test
  void aLinkUnderTheNameOfThePartIsPassedBy() throws IOException {
    Path elsewhere = folder.resolve("elsewhere");
    Files.createSymbolicLink(folder.resolve(".order.xlsx.part1"), elsewhere);
    WholeOutput.file(folder.resolve("order.xlsx"), false, WholeOutputTest::words);
    assertFalse(Files.exists(elsewhere));
    assertEquals(List.of(".order.xlsx.part1", "order.xlsx"), names());
  }

  @Test
  void aFolderIsNeverReplacedByAFile() throws IOException {
    Path target = Files.createDirectory(folder.resolve("order.xlsx"));
    assertThrows(
        FileAlreadyExistsException.class,
        () -> WholeOutput.file(target, true, WholeOutputTest::words));
    assertEquals(List.of("order.xlsx"), names());
  }
}
