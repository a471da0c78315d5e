package org.pourbook.book.in;

import java.io.FilterReader;
import java.io.IOException;
import java.io.Reader;

/** The characters of a CSV file, refused where they cannot be the rows of a table. */
final class CsvText extends FilterReader {

  /**
   * A full row of a spreadsheet has 16,384 cells; 64 characters in each are more than any job's.
   */
  private static final int LONGEST_ROW = 1 << 20;

  private int sinceRow;

  CsvText(Reader in) {
    super(in);
  }

  /** Says what no table holds. */
  static final class Refused extends IOException {
    private static final long serialVersionUID = 1L;

    private final String fault;

    Refused(String fault) {
      super(fault);
      this.fault = fault;
    }

    /** Returns the end of a sentence that begins with the file's name. */
    String fault() {
      return fault;
    }
  }

  /** Says that a row is complete, and another begins. */
  void endRow() {
    sinceRow = 0;
  }

  @Override
  public int read() throws IOException {
    char[] one = new char[1];
    return read(one, 0, 1) < 0 ? -1 : one[0];
  }

  @Override
  public int read(char[] buffer, int offset, int length) throws IOException {
    int read = super.read(buffer, offset, length);
    for (int i = offset; i < offset + read; i++) {
      if (buffer[i] == '\0') {
        throw new Refused("holds NUL characters: save it as CSV UTF-8");
      }
    }
    sinceRow += Math.max(read, 0);
    if (sinceRow > LONGEST_ROW) {
      throw new Refused("has a row longer than any table's: is a quote not closed?");
    }
    return read;
  }
}
