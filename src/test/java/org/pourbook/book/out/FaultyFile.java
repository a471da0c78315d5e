package org.pourbook.book.out;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;

/** Fails at one of its writes, as a file does on a disk that is full, and at all after it. */
final class FaultyFile implements SeekableByteChannel {

  private final SeekableByteChannel file;
  private final int sound;
  private int writes;

  /** Fails after so many sound writes. */
  FaultyFile(SeekableByteChannel file, int sound) {
    this.file = file;
    this.sound = sound;
  }

  int writes() {
    return writes;
  }

  @Override
  public int write(ByteBuffer bytes) throws IOException {
    writes++;
    if (writes > sound) {
      throw new IOException(FaultyStream.FULL);
    }
    return file.write(bytes);
  }

  @Override
  public int read(ByteBuffer bytes) throws IOException {
    return file.read(bytes);
  }

  @Override
  public long position() throws IOException {
    return file.position();
  }

  @Override
  public SeekableByteChannel position(long place) throws IOException {
    file.position(place);
    return this;
  }

  @Override
  public long size() throws IOException {
    return file.size();
  }

  @Override
  public SeekableByteChannel truncate(long size) throws IOException {
    file.truncate(size);
    return this;
  }

  @Override
  public boolean isOpen() {
    return file.isOpen();
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
