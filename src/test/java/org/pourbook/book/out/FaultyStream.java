package org.pourbook.book.out;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/** Fails at one of its writes, as a disk does that is full, and at all after it. */
final class FaultyStream extends FilterOutputStream {

  static final String FULL = "No space left on device";

  /** So many sound writes that none fails. */
  static final int NEVER = Integer.MAX_VALUE;

  private final int sound;
  private int writes;

  /** Fails after so many sound writes. */
  FaultyStream(OutputStream out, int sound) {
    super(out);
    this.sound = sound;
  }

  int writes() {
    return writes;
  }

  private void count() throws IOException {
    writes++;
    if (writes > sound) {
      throw new IOException(FULL);
    }
  }

  @Override
  public void write(int b) throws IOException {
    count();
    out.write(b);
  }

  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    count();
    out.write(bytes, offset, length);
  }
}
