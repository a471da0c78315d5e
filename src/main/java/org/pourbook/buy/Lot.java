package org.pourbook.buy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pourbook.job.Job;
import org.pourbook.takeoff.Material.Planning;
import org.pourbook.takeoff.MaterialKey;

/**
 * What goes to one supplier whole (BUY-3): a material in a size for a job, or for the jobs that
 * share a delivery.
 *
 * @param service counted under Services, not Materials
 * @param delivered brought by the supplier, so that a delivery fee may be due
 * @param portions several jobs with one delivery, or one job with one delivery or more
 * @param inHand stock that an earlier order brings, to be cut before any is bought
 * @param onlyFrom the supplier who must bring it, where one has begun to
 */
record Lot(
    MaterialKey key,
    Planning planning,
    boolean service,
    boolean delivered,
    List<Portion> portions,
    List<StockInHand> inHand,
    Optional<String> onlyFrom) {
  Lot {
    portions = List.copyOf(portions);
    inHand = List.copyOf(inHand);
  }

  Lot(
      MaterialKey key,
      Planning planning,
      boolean service,
      boolean delivered,
      List<Portion> portions) {
    this(key, planning, service, delivered, portions, List.of(), Optional.empty());
  }

  /** Returns the same lot of other portions: what is left of it to buy. */
  Lot withPortions(List<Portion> left) {
    return new Lot(key, planning, service, delivered, left, inHand, onlyFrom);
  }

  Lot withInHand(List<StockInHand> stock) {
    return new Lot(key, planning, service, delivered, portions, stock, onlyFrom);
  }

  Lot onlyFrom(String supplier) {
    return new Lot(key, planning, service, delivered, portions, inHand, Optional.of(supplier));
  }

  /** Returns whether it could come on another day: concrete is poured, services are done. */
  boolean isGoods() {
    return delivered && planning.isOfGoods();
  }

  /** Returns the unit in which prices' packs are understood: the first job's. */
  OwnUnit unit() {
    return portions.get(0).unit();
  }

  double needed() {
    return portions.stream().mapToDouble(Portion::needed).sum();
  }

  double net() {
    return portions.stream().mapToDouble(Portion::net).sum();
  }

  /** Returns the jobs, by code. */
  List<Job> jobs() {
    return byJob().values().stream().map(ofJob -> ofJob.get(0).job()).toList();
  }

  /** Returns each job's portions, by code of job. */
  Map<String, List<Portion>> byJob() {
    Map<String, List<Portion>> byCode = new TreeMap<>();
    for (Portion portion : portions) {
      byCode.computeIfAbsent(portion.job().code(), code -> new ArrayList<>()).add(portion);
    }
    return byCode;
  }

  boolean hasPieces() {
    return portions.stream().anyMatch(portion -> !portion.pieces().isEmpty());
  }

  List<Portion> portionsOf(Job job) {
    return portions.stream().filter(portion -> portion.job().code().equals(job.code())).toList();
  }

  /** Returns what one job would buy alone, these being its portions. */
  Lot alone(List<Portion> ofJob) {
    return new Lot(key, planning, service, delivered, ofJob);
  }

  /** Returns the deliveries, first to last. */
  List<Delivery> deliveries() {
    return portions.stream().map(Portion::delivery).distinct().sorted().toList();
  }

  /** Returns how much each delivery needs, first to last. */
  Map<Delivery, Double> neededByDelivery() {
    Map<Delivery, Double> needed = new LinkedHashMap<>();
    deliveries().forEach(delivery -> needed.put(delivery, 0.0));
    portions.forEach(portion -> needed.merge(portion.delivery(), portion.needed(), Double::sum));
    return needed;
  }

  /** Returns how much each of {@link #jobs} needs. */
  List<Double> weights() {
    return byJob().values().stream()
        .map(ofJob -> ofJob.stream().mapToDouble(Portion::needed).sum())
        .toList();
  }
}
