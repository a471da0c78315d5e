package org.pourbook.buy;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.pourbook.cut.CutPlanner;
import org.pourbook.takeoff.Material.Planning;
import org.pourbook.takeoff.TakeOff;

/** Changed needs turned into what must be ordered besides an earlier order. */
public final class SupplementBuyer {

  private final Earlier earlier;
  private final PriceBook prices;
  private final CutPlanner planner;
  private final List<Choice> settled = new ArrayList<>();
  private final List<Lot> open = new ArrayList<>();
  private final List<CutBesides> cuts = new ArrayList<>();

  private SupplementBuyer(Earlier earlier, PriceBook prices, CutPlanner planner) {
    this.earlier = earlier;
    this.prices = prices;
    this.planner = planner;
  }

  /**
   * Returns what is ordered besides and what can be sent back. What an earlier order brings is used
   * first; a material whose needs have not changed is not planned again.
   *
   * @param takeOffs of the jobs as they are now, worked out with {@link StillOffered}
   */
  public static Supplement buy(
      Earlier earlier, List<TakeOff> takeOffs, PriceBook prices, CutPlanner planner) {
    return new SupplementBuyer(earlier, prices, planner).buy(takeOffs);
  }

  private Supplement buy(List<TakeOff> takeOffs) {
    List<Lot> before = Lots.of(earlier.takeOffs(), earlier.prices());
    List<Lot> now = TiedRuns.freed(Lots.of(takeOffs, new StillOffered(earlier.prices(), prices)));
    List<Pool> pools = Pools.of(before, now, earlier.inHand());
    pools.stream().filter(pool -> !pool.isUnchanged()).forEach(this::plan);
    OneDay day = new OneDay(open);
    open.replaceAll(day::of);
    cuts.forEach(cut -> cut.bring(day));
    Buyer.Met met = Buyer.besides(takeOffs, settled, open, prices, planner, earlier.lastOrder());
    cuts.forEach(cut -> cut.giveBack(met.choices()));
    List<RevisedLine> lines =
        RevisedLines.of(pools, earlier.left(), met.bought(), prices, jobs(takeOffs));
    return new Supplement(met.bought(), lines, CreditTax.of(earlier, lines));
  }

  /** Returns the jobs as they are now, then those that were. */
  private List<String> jobs(List<TakeOff> takeOffs) {
    Set<String> jobs = new LinkedHashSet<>();
    takeOffs.forEach(takeOff -> jobs.add(takeOff.job().code()));
    earlier.takeOffs().forEach(takeOff -> jobs.add(takeOff.job().code()));
    earlier.left().forEach(row -> jobs.add(row.job()));
    earlier.inHand().forEach(row -> jobs.add(row.job()));
    return List.copyOf(jobs);
  }

  private void plan(Pool pool) {
    boolean byPour = pool.now().stream().anyMatch(lot -> lot.planning() == Planning.BY_POUR);
    boolean cut = pool.now().stream().anyMatch(Lot::hasPieces);
    if (byPour) {
      open.addAll(ConcreteBesides.open(pool, earlier.prices(), prices));
    } else if (cut) {
      CutBesides planned = CutBesides.of(pool, earlier.prices(), planner);
      settled.addAll(planned.settled());
      open.addAll(planned.open());
      cuts.add(planned);
    } else {
      open.addAll(CountedBesides.open(pool));
    }
  }
}
