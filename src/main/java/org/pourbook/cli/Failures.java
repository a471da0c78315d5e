package org.pourbook.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Turns what a command could not do into one sentence and an exit status. */
final class Failures implements IExecutionExceptionHandler {

  @Override
  public int handleExecutionException(
      Exception failure, CommandLine command, ParseResult arguments) {
    PrintWriter err = command.getErr();
    IOException trouble =
        failure instanceof IOException io
            ? io
            : failure instanceof UncheckedIOException unchecked ? unchecked.getCause() : null;
    if (trouble != null) {
      err.println("pourbook: " + sentence(trouble));
      err.flush();
      return ExitStatus.NOTHING;
    }
    err.println("pourbook: an error inside the tool, please report it with these lines:");
    StringWriter trace = new StringWriter();
    failure.printStackTrace(new PrintWriter(trace));
    err.println(trace);
    err.flush();
    return ExitStatus.DEFECT;
  }

  private static String sentence(IOException trouble) {
    if (trouble instanceof FileSystemException file) {
      return file.getFile() + ": " + reason(file);
    }
    String message = trouble.getMessage();
    return message == null ? trouble.getClass().getSimpleName() : message;
  }

  private static String reason(FileSystemException trouble) {
    if (trouble instanceof NoSuchFileException) {
      return "there is no such file or folder.";
    }
    if (trouble instanceof AccessDeniedException) {
      return "access is denied.";
    }
    if (trouble instanceof NotDirectoryException) {
      return "a part of this path is a file, not a folder.";
    }
    if (trouble instanceof FileAlreadyExistsException) {
      return "it exists already; use --overwrite to replace it.";
    }
    String reason = trouble.getReason() == null ? "it cannot be written" : trouble.getReason();
    return reason.endsWith("?") ? reason : reason + ".";
  }
}
