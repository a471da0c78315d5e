package org.pourbook.book.out;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Outputs that appear whole or not at all: written beside their place, then moved into it. */
final class WholeOutput {

  private WholeOutput() {}

  /** Writes the bytes of a file. */
  @FunctionalInterface
  interface Content {
    void writeTo(OutputStream out) throws IOException;
  }

  /** Writes files into an empty folder. */
  @FunctionalInterface
  interface Folder {
    void writeTo(Path folder) throws IOException;
  }

  /**
   * Writes a file.
   *
   * @throws FileAlreadyExistsException if it exists and {@code overwrite} is false
   */
  static void file(Path target, boolean overwrite, Content content) throws IOException {
    refuse(target, overwrite);
    Path part = beside(target);
    try {
      try (OutputStream out =
          new BufferedOutputStream(Files.newOutputStream(part, StandardOpenOption.CREATE_NEW))) {
        content.writeTo(out);
      }
      refuse(target, overwrite);
      move(part, target);
    } catch (IOException | RuntimeException e) {
      throw trouble(target, e);
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /**
   * Writes files into a folder, which is made when missing. Files of other names stay in it.
   *
   * @throws FileAlreadyExistsException if one of the files exists and {@code overwrite} is false
   */
  static void folder(Path target, boolean overwrite, Folder content) throws IOException {
    Path part = beside(target);
    Files.createDirectory(part);
    try {
      content.writeTo(part);
      List<Path> files = filesOf(part);
      for (Path file : files) {
        refuse(target.resolve(part.relativize(file).toString()), overwrite);
      }
      Files.createDirectories(target);
      for (Path file : files) {
        move(file, target.resolve(part.relativize(file).toString()));
      }
    } catch (IOException | RuntimeException e) {
      throw trouble(target, e);
    } finally {
      for (Path file : filesOf(part)) {
        Files.delete(file);
      }
      Files.delete(part);
    }
  }

  private static void refuse(Path file, boolean overwrite) throws IOException {
    if (Files.isDirectory(file) || (isTaken(file) && !overwrite)) {
      throw new FileAlreadyExistsException(file.toString());
    }
  }

  /** Returns whether something bears the name, be it a link that points nowhere. */
  private static boolean isTaken(Path file) {
    return Files.exists(file, LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * Returns what kept an output from being written, with the output's name. A full disk says none,
   * and the workbook library wraps what its own temporary files meet.
   *
   * @throws RuntimeException the failure itself if no file had a part in it
   */
  private static IOException trouble(Path target, Exception failure) {
    for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
      if (cause instanceof FileSystemException named) {
        return named;
      }
      if (cause instanceof IOException unnamed) {
        FileSystemException named =
            new FileSystemException(target.toString(), null, unnamed.getMessage());
        named.initCause(failure);
        return named;
      }
    }
    throw (RuntimeException) failure;
  }

  /** Returns a free name in the same folder, so that the move is no copy. */
  private static Path beside(Path target) {
    Path whole = target.toAbsolutePath();
    for (int i = 1; ; i++) {
      Path part = whole.resolveSibling("." + whole.getFileName() + ".part" + i);
      if (!isTaken(part)) {
        return part;
      }
    }
  }

  private static List<Path> filesOf(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return new ArrayList<>(files.sorted().toList());
    }
  }

  private static void move(Path part, Path target) throws IOException {
    try {
      Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(part, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
