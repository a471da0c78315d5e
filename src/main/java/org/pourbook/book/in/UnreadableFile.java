package org.pourbook.book.in;

import java.io.IOException;

/** A file that cannot be read at all; its message is one sentence that a person can act on. */
public final class UnreadableFile extends IOException {

  private static final long serialVersionUID = 1L;

  public UnreadableFile(String sentence) {
    super(sentence);
  }

  public UnreadableFile(String sentence, Throwable cause) {
    super(sentence, cause);
  }
}
