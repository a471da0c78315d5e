package org.pourbook.book.in;

import java.io.IOException;
import java.nio.file.Path;

/** A file that cannot be read at all; its message is one sentence that a person can act on. */
public final class UnreadableFile extends IOException {

  private static final long serialVersionUID = 1L;

  public UnreadableFile(String sentence) {
    super(sentence);
  }

  public UnreadableFile(String sentence, Throwable cause) {
    super(sentence, cause);
  }

  /** Says that there is no such file or folder. */
  public static UnreadableFile missing(Path path) {
    return new UnreadableFile(path + " was not found");
  }
}
