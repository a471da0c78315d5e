package org.pourbook.buy;

import java.util.List;

/** A lot and the ways to meet it, at least one. */
record Offered(Lot lot, List<Option> options) {
  Offered {
    options = List.copyOf(options);
    if (options.isEmpty()) {
      throw new IllegalArgumentException("no way to meet " + lot.key());
    }
  }
}
