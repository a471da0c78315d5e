package org.pourbook.book.out;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;

/**
 * Bytes that are kept until they are read again: the first in memory, all in a temporary file once
 * they are many.
 */
final class Spool extends OutputStream implements Closeable {

  private static final int MOST_IN_MEMORY = 1 << 22;

  private final int mostInMemory;
  private final Callable<SeekableByteChannel> files;
  private final Memory memory = new Memory();
  private @Nullable SeekableByteChannel file;
  private long written;

  Spool() {
    this(MOST_IN_MEMORY, () -> opened(Files.createTempFile("pourbook", ".rows")));
  }

  /**
   * Makes an empty spool.
   *
   * @param mostInMemory bytes that are not yet written into a file
   * @param files opens an empty file when it is needed
   */
  Spool(int mostInMemory, Callable<SeekableByteChannel> files) {
    this.mostInMemory = mostInMemory;
    this.files = files;
  }

  /** Returns how many bytes it holds. */
  long size() {
    return written + memory.size();
  }

  @Override
  public void write(int b) throws IOException {
    write(new byte[] {(byte) b}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int offset, int length) throws IOException {
    memory.write(bytes, offset, length);
    if (memory.size() > mostInMemory) {
      spill();
    }
  }

  private void spill() throws IOException {
    try {
      SeekableByteChannel to = file;
      if (to == null) {
        to = files.call();
        file = to;
      }
      to.position(written);
      written += memory.writeTo(to);
      memory.reset();
    } catch (Exception e) {
      throw new IOException(
          "no temporary file can be written into "
              + System.getProperty("java.io.tmpdir")
              + "; is the disk full? Java's option -Djava.io.tmpdir names another folder",
          e);
    }
  }

  /** Opens a file that is gone when it is closed, be it that the run is killed. */
  static SeekableByteChannel opened(Path path) throws IOException {
    return Files.newByteChannel(
        path,
        StandardOpenOption.READ,
        StandardOpenOption.WRITE,
        StandardOpenOption.DELETE_ON_CLOSE);
  }

  /** Writes the bytes from one place up to another. */
  void copy(long from, long to, OutputStream out) throws IOException {
    SeekableByteChannel read = file;
    if (read == null) {
      memory.copy((int) from, (int) to, out);
      return;
    }
    if (memory.size() > 0) {
      spill();
    }
    ByteBuffer buffer = ByteBuffer.allocate(1 << 16);
    for (long at = from; at < to; at += buffer.limit()) {
      buffer.clear().limit((int) Math.min(buffer.capacity(), to - at));
      if (read.position(at).read(buffer) < 0) {
        throw new IOException("the temporary file is shorter than what was written");
      }
      buffer.flip();
      out.write(buffer.array(), 0, buffer.limit());
    }
  }

  /** Bytes in memory that are written from where they stand. */
  private static final class Memory extends ByteArrayOutputStream {

    void copy(int from, int to, OutputStream out) throws IOException {
      out.write(buf, from, to - from);
    }

    int writeTo(SeekableByteChannel file) throws IOException {
      ByteBuffer all = ByteBuffer.wrap(buf, 0, count);
      while (all.hasRemaining()) {
        file.write(all);
      }
      return count;
    }
  }

  @Override
  public void close() throws IOException {
    if (file != null) {
      file.close();
    }
  }
}
