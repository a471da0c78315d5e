package org.pourbook.buy;

import static org.pourbook.problem.Standing.COMMON_PRACTICE;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.Source;

/** Chooses suppliers for the cheapest total with delivery fees, minimums and stops (BUY-3). */
final class CheapestTotal {

  /** Nodes of one search, after which its bound is told instead of a proof. */
  static final int NODE_LIMIT = 200_000;

  private CheapestTotal() {}

  /** Returns a choice for each lot, in their order. */
  @Source(
      rule = "BUY-3",
      says =
          "Suppliers are chosen for the cheapest total with delivery fees, minimum orders, free-from"
              + " limits, tax and the Cost of another stop; a line goes to one supplier whole",
      value = "exact over all sets of up to 12 suppliers",
      standing = COMMON_PRACTICE)
  static List<Choice> choose(List<Offered> lots) {
    List<Option> chosen = new ArrayList<>(lots.stream().map(lot -> lot.options().get(0)).toList());
    for (StopGroup group : StopGroup.of(lots)) {
      StopSearch.Found found = StopSearch.cheapest(group.problem(), NODE_LIMIT);
      for (int i = 0; i < group.lots().size(); i++) {
        int lot = group.lots().get(i);
        Option option = lots.get(lot).options().get(found.chosen().get(i));
        chosen.set(lot, i == 0 && !found.isProven() ? told(option, found) : option);
      }
    }
    List<Choice> choices = new ArrayList<>();
    for (int lot = 0; lot < lots.size(); lot++) {
      choices.add(new Choice(lots.get(lot).lot(), chosen.get(lot)));
    }
    return choices;
  }

  private static Option told(Option option, StopSearch.Found found) {
    return option.with(
        new Told(
            "Suppliers were chosen at "
                + money(found.costMicros())
                + " without proof that nothing is cheaper; the bound found is "
                + money(found.boundMicros()),
            "BUY-3"));
  }

  private static Money money(long micros) {
    return Money.ofCents(Math.round(micros / 10_000.0));
  }
}
