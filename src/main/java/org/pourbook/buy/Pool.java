package org.pourbook.buy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.pourbook.takeoff.MaterialKey;

/**
 * A material for the jobs among which it may be shared: what they needed, what they need now, and
 * what the earlier order brings. No other job's needs bear on it.
 */
final class Pool {

  private final Set<String> jobs = new TreeSet<>();
  private final List<Lot> before = new ArrayList<>();
  private final List<Lot> now = new ArrayList<>();
  private final Map<ItemInHand.Id, ItemInHand> items = new LinkedHashMap<>();

  /** A material that a job needs, in units that may be added up. */
  record Want(MaterialKey key, String unitKind, String job) {}

  static Want want(Lot lot, String job) {
    return new Want(lot.key().normal(), lot.unit().kind(), job);
  }

  void addBefore(Lot lot) {
    before.add(lot);
    lot.jobs().forEach(job -> jobs.add(job.code()));
  }

  void addNow(Lot lot) {
    now.add(lot);
    lot.jobs().forEach(job -> jobs.add(job.code()));
  }

  void add(InHand row) {
    double held = OwnUnit.written(row.unit()).toBase(row.packHolds());
    ItemInHand.Id id = ItemInHand.Id.of(row.supplier(), row.item(), row.orderUnit(), held);
    items.computeIfAbsent(id, k -> new ItemInHand(row, held)).add(row);
    jobs.add(row.job());
  }

  Set<String> jobs() {
    return jobs;
  }

  List<Lot> before() {
    return before;
  }

  /** Returns what is needed now: first the lots that were needed just so before, then by day. */
  List<Lot> now() {
    Set<Object> known = new HashSet<>();
    before.forEach(lot -> known.add(likeness(lot)));
    return now.stream()
        .sorted(
            Comparator.comparing((Lot lot) -> !known.contains(likeness(lot)))
                .thenComparing(lot -> lot.deliveries().get(0)))
        .toList();
  }

  /** Returns whether a lot was needed just so before. */
  boolean wasNeeded(Lot lot) {
    return before.stream().anyMatch(other -> likeness(other).equals(likeness(lot)));
  }

  private static Object likeness(Lot lot) {
    return List.of(lot.deliveries(), Needs.of(List.of(lot)));
  }

  List<ItemInHand> items() {
    return List.copyOf(items.values());
  }

  /** Returns whether every job needs what it needed before. */
  boolean isUnchanged() {
    return Needs.of(before).equals(Needs.of(now));
  }

  /** Returns how much each job needs now. */
  Map<String, Double> neededByJob() {
    Map<String, Double> needed = new TreeMap<>();
    jobs.forEach(job -> needed.put(job, 0.0));
    for (Lot lot : now) {
      lot.portions().forEach(p -> needed.merge(p.job().code(), p.needed(), Double::sum));
    }
    return needed;
  }

  /** Returns the wants of both times, each once. */
  static Set<Want> wants(Lot lot) {
    Set<Want> wants = new LinkedHashSet<>();
    lot.jobs().forEach(job -> wants.add(want(lot, job.code())));
    return wants;
  }
}
