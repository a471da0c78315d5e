package org.pourbook.book.in;

import java.util.Optional;
import org.pourbook.book.in.Table.TableRow;
import org.pourbook.job.Kind;

/**
 * What the passes must know of a section before its other cells are read.
 *
 * @param kind empty where its cell was refused
 */
record SectionHead(
    String code, Optional<Kind> kind, Optional<String> partOf, TableRow row, Cells cells) {

  boolean isPart() {
    return kind.filter(Kind::isPart).isPresent();
  }
}
