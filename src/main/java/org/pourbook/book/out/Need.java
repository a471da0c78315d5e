package org.pourbook.book.out;

import org.pourbook.buy.Line;
import org.pourbook.takeoff.MaterialKey;

/** A material in a size that a job needs; sizes are compared as {@link MaterialKey#normal} does. */
record Need(String job, MaterialKey key) {
  Need {
    key = key.normal();
  }

  static Need of(Line line) {
    return new Need(line.job(), line.key());
  }
}
