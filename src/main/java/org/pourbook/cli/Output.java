package org.pourbook.cli;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.pourbook.book.in.UnreadableFile;
import picocli.CommandLine.Option;

/** Where a command writes, shared by all that write. */
final class Output {

  private static final Pattern ENDING = Pattern.compile("\\.[A-Za-z]{1,4}$");

  @Option(
      names = {"-o", "--output"},
      paramLabel = "FILE",
      description = "Where to write; a folder gets one CSV a sheet.")
  private @Nullable Path file;

  @Option(names = "--overwrite", description = "Replace an older output.")
  private boolean overwrite;

  boolean isOverwrite() {
    return overwrite;
  }

  /**
   * Returns where to write, checked with the inputs before any work is done: beside the first input
   * under the given name when no -o is written.
   *
   * @throws FileSystemException if it exists and may not be replaced, is an input, or its folder is
   *     missing
   */
  Path resolve(Path firstInput, String suffix, List<Path> inputs) throws IOException {
    return checked(
        file == null ? firstInput.resolveSibling(stem(firstInput) + suffix) : workbook(file),
        inputs);
  }

  /** Returns a place to write, checked like the one of {@code -o}. */
  Path checked(Path target, List<Path> inputs) throws IOException {
    for (Path input : inputs) {
      if (Files.notExists(input)) {
        throw UnreadableFile.missing(input);
      }
      if (Files.exists(target) && Files.exists(input) && Files.isSameFile(target, input)) {
        throw new FileSystemException(
            target.toString(), null, "it is an input and is never written over");
      }
    }
    return checked(target);
  }

  /** Returns where to write when there is no input. */
  Path resolve(Path usual) throws IOException {
    return checked(file == null ? usual : workbook(file));
  }

  /** A spreadsheet program opens no workbook that is named as something else. */
  private static Path workbook(Path target) throws FileSystemException {
    Matcher ending = ENDING.matcher(target.toString());
    if (ending.find() && !ending.group().equalsIgnoreCase(".xlsx") && !Files.isDirectory(target)) {
      throw new FileSystemException(
          target.toString(), null, "an output is an .xlsx workbook, or a folder that exists");
    }
    return target;
  }

  private Path checked(Path target) throws IOException {
    if (Files.isRegularFile(target) && !overwrite) {
      throw new FileAlreadyExistsException(target.toString());
    }
    Path folder = target.toAbsolutePath().getParent();
    if (folder != null && !Files.isDirectory(folder)) {
      if (Files.exists(folder)) {
        throw new FileSystemException(
            target.toString(), null, "it cannot be written, " + folder + " is a file");
      }
      throw new NoSuchFileException(folder.toString());
    }
    return target;
  }

  /** Returns a file's name without its ending: {@code spring} for {@code spring.xlsx}. */
  static String stem(Path input) {
    Path name = input.toAbsolutePath().normalize().getFileName();
    String text = name == null ? "jobs" : name.toString();
    int dot = text.lastIndexOf('.');
    return dot > 0 && !Files.isDirectory(input) ? text.substring(0, dot) : text;
  }
}
