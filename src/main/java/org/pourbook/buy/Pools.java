package org.pourbook.buy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The pools of an earlier order and of what is needed now. */
final class Pools {

  private final Map<Pool.Want, Pool.Want> links = new LinkedHashMap<>();

  private Pools() {}

  /** Returns the pools: wants that share a lot, now or before, are in one. */
  static List<Pool> of(List<Lot> before, List<Lot> now, List<InHand> inHand) {
    Pools pools = new Pools();
    before.forEach(lot -> pools.join(Pool.wants(lot)));
    now.forEach(lot -> pools.join(Pool.wants(lot)));
    inHand.forEach(row -> pools.join(Set.of(want(row))));
    Map<Pool.Want, Pool> made = new LinkedHashMap<>();
    before.forEach(lot -> pools.poolOf(lot, made).addBefore(lot));
    now.forEach(lot -> pools.poolOf(lot, made).addNow(lot));
    inHand.forEach(row -> made.computeIfAbsent(pools.root(want(row)), k -> new Pool()).add(row));
    return new ArrayList<>(made.values());
  }

  private static Pool.Want want(InHand row) {
    return new Pool.Want(row.key().normal(), OwnUnit.written(row.unit()).kind(), row.job());
  }

  private Pool poolOf(Lot lot, Map<Pool.Want, Pool> made) {
    Pool.Want any = Pool.wants(lot).iterator().next();
    return made.computeIfAbsent(root(any), k -> new Pool());
  }

  private void join(Set<Pool.Want> wants) {
    Pool.Want first = wants.iterator().next();
    for (Pool.Want want : wants) {
      links.putIfAbsent(want, want);
      links.put(root(want), root(first));
    }
  }

  private Pool.Want root(Pool.Want want) {
    Pool.Want at = want;
    Pool.Want next = links.getOrDefault(at, at);
    while (!next.equals(at)) {
      at = next;
      next = links.getOrDefault(at, at);
    }
    return at;
  }
}
