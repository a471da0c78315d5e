package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.pourbook.takeoff.Material.Planning;

/** Materials by whole packs: what is in hand goes first, then packs are bought. */
final class CountedBesides {

  private CountedBesides() {}

  /** Returns what is left to buy for a pool; what is over is given back in whole packs. */
  static List<Lot> open(Pool pool) {
    double free = pool.items().stream().mapToDouble(i -> i.packs().doubleValue() * i.held()).sum();
    List<Lot> open = new ArrayList<>();
    int spare = 0;
    for (Lot lot : pool.now()) {
      List<Portion> left = new ArrayList<>();
      List<Portion> portions =
          lot.portions().stream().sorted(Comparator.comparing(Portion::delivery)).toList();
      for (Portion portion : portions) {
        double brought = Math.min(free, portion.needed());
        free -= brought;
        if (Packs.exact(portion.needed() - brought).signum() > 0) {
          left.add(portion.after(brought));
        }
      }
      if (!left.isEmpty()) {
        open.add(lot.reducedTo(left));
      }
      spare += lot.planning() == Planning.STRIPS ? CountedOptions.spare(lot) : 0;
    }
    giveBack(pool, free, spare);
    return open;
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
