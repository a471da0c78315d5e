package org.pourbook.buy;

import java.util.List;

/** Chooses a supplier for each lot. */
@FunctionalInterface
interface Chooser {

  /** Returns a choice for each lot, in their order. */
  List<Choice> choose(List<Offered> lots);
}
