package org.pourbook.book.out;

import java.io.IOException;
import java.util.Optional;

/**
 * What was worked out while writing was rehearsed.
 *
 * @param failure of the rehearsal; the result is none the worse for it
 */
public record Rehearsed<T>(T result, Optional<Throwable> failure) {

  /** Writes an output. */
  public interface Writing {
    /**
     * Writes it whole or not at all.
     *
     * @throws IOException if it cannot be written
     */
    void write() throws IOException;
  }

  /**
   * Writes the output proper. Where that fails too, the failure bears the rehearsal's as
   * suppressed: a class whose set-up failed once tells the second time only that it cannot be used.
   *
   * @throws IOException if the output cannot be written
   */
  public void write(Writing writing) throws IOException {
    try {
      writing.write();
    } catch (IOException | RuntimeException | Error e) {
      failure.ifPresent(e::addSuppressed);
      throw e;
    }
  }
}
