package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.pourbook.takeoff.Material.Planning;

/** Materials by whole packs: what is in hand goes first, then packs are bought. */
final class CountedBesides {

  private CountedBesides() {}

  /**
   * Returns what is left to buy for a pool; what is over is given back in whole packs. Each job
   * uses its own first, then what others have over.
   */
  static List<Lot> open(Pool pool) {
    Map<String, Double> free = new TreeMap<>();
    for (ItemInHand item : pool.items()) {
      for (String job : pool.jobs()) {
        free.merge(job, item.packsOf(job).doubleValue() * item.held(), Double::sum);
      }
    }
    Map<Portion, Double> brought = new IdentityHashMap<>();
    List<Portion> portions =
        pool.now().stream()
            .flatMap(lot -> lot.portions().stream())
            .sorted(Comparator.comparing(Portion::delivery))
            .toList();
    portions.forEach(portion -> bring(portion, portion.job().code(), free, brought));
    pool.jobs().forEach(job -> portions.forEach(portion -> bring(portion, job, free, brought)));
    List<Lot> open = new ArrayList<>();
    for (Lot lot : pool.now()) {
      List<Portion> left = new ArrayList<>();
      for (Portion portion : lot.portions()) {
        double has = brought.getOrDefault(portion, 0.0);
        if (Packs.exact(portion.needed() - has).signum() > 0) {
          left.add(portion.after(has));
        }
      }
      if (!left.isEmpty()) {
        open.add(lot.withPortions(left));
      }
    }
    double over = free.values().stream().mapToDouble(Double::doubleValue).sum();
    giveBack(pool, over, spare(pool));
    return open;
  }

  private static void bring(
      Portion portion, String from, Map<String, Double> free, Map<Portion, Double> brought) {
    double has = free.getOrDefault(from, 0.0);
    double taken = Math.min(has, portion.needed() - brought.getOrDefault(portion, 0.0));
    free.put(from, has - taken);
    brought.merge(portion, taken, Double::sum);
  }

  private static int spare(Pool pool) {
    return pool.now().stream()
        .filter(lot -> lot.planning() == Planning.STRIPS)
        .mapToInt(CountedOptions::spare)
        .sum();
  }

  /** The dearest items go back first. */
  private static void giveBack(Pool pool, double over, int spare) {
    double left = over;
    int keep = spare;
    List<ItemInHand> dearestFirst =
        pool.items().stream()
            .sorted(Comparator.comparing(ItemInHand::perBaseUnit).reversed())
            .toList();
    for (ItemInHand item : dearestFirst) {
      if (pool.now().isEmpty()) {
        item.giveBack(item.packs());
        continue;
      }
      BigDecimal whole = Packs.down(left, item.held()).min(item.packs());
      BigDecimal spared = whole.min(BigDecimal.valueOf(keep));
      keep -= spared.intValue();
      BigDecimal back = whole.subtract(spared);
      item.giveBack(back);
      left -= whole.doubleValue() * item.held();
    }
  }
}
