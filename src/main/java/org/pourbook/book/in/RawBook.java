package org.pourbook.book.in;

import java.util.List;
import org.pourbook.desk.Batch.InputFile;

/**
 * A workbook or folder as it is read.
 *
 * @param names of all its sheets, hidden ones too
 * @param sheets those that were asked for
 * @param files that it was read from
 */
record RawBook(List<String> names, List<RawSheet> sheets, List<InputFile> files) {
  RawBook {
    names = List.copyOf(names);
    sheets = List.copyOf(sheets);
    files = List.copyOf(files);
  }

  /** Says which sheets of a book are read. */
  @FunctionalInterface
  interface Choice {
    boolean reads(String name, List<String> allNames);
  }
}
