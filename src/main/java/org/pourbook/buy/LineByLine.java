package org.pourbook.buy;

import java.util.Comparator;
import java.util.List;

/** Takes the cheapest option of each lot by itself, goods and truck fees; on a tie the first. */
final class LineByLine implements Chooser {

  @Override
  public List<Choice> choose(List<Offered> lots) {
    return lots.stream()
        .map(
            offered ->
                new Choice(
                    offered.lot(),
                    offered.options().stream()
                        .min(Comparator.comparing(option -> option.goods().plus(option.loadFees())))
                        .orElseThrow()))
        .toList();
  }
}
