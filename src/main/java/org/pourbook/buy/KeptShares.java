package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What is still needed of an item, and what can be sent back, handed out to the jobs of a pool. */
final class KeptShares {

  private static final int SHARE_DECIMALS = 6;
  private static final BigDecimal NONE = BigDecimal.ZERO;

  private KeptShares() {}

  /**
   * Returns how much of an item each job keeps: what it has, less what it can send back. What jobs
   * that no longer need it leave to others is theirs by need.
   */
  static Map<String, BigDecimal> kept(Pool pool, ItemInHand item) {
    Map<String, BigDecimal> kept = new TreeMap<>();
    pool.jobs().forEach(job -> kept.put(job, item.packsOf(job)));
    if (pool.isUnchanged()) {
      return kept;
    }
    Map<String, Double> needed = pool.neededByJob();
    kept.replaceAll((job, has) -> needed.getOrDefault(job, 0.0) > 0 ? has : NONE);
    BigDecimal over = sum(kept).subtract(item.kept());
    boolean enough = over.signum() >= 0;
    List<Double> weights =
        enough ? overNeed(kept, needed, item.kept()) : List.copyOf(needed.values());
    List<BigDecimal> shares = shares(over.abs(), weights);
    int i = 0;
    for (String job : needed.keySet()) {
      BigDecimal share = shares.get(i++);
      kept.merge(job, enough ? share.negate() : share, BigDecimal::add);
    }
    return kept;
  }

  /** Returns how much each job has more than its share, by need, of what is kept. */
  private static List<Double> overNeed(
      Map<String, BigDecimal> has, Map<String, Double> needed, BigDecimal kept) {
    double all = needed.values().stream().mapToDouble(Double::doubleValue).sum();
    List<Double> over = new ArrayList<>();
    needed.forEach(
        (job, need) -> {
          double share = all > 0 ? kept.doubleValue() * need / all : 0;
          over.add(has.getOrDefault(job, NONE).doubleValue() - share);
        });
    return over;
  }

  private static BigDecimal sum(Map<String, BigDecimal> packs) {
    return packs.values().stream().reduce(NONE, BigDecimal::add);
  }

  /** Returns how much of an item each job can send back: all of it that nobody keeps. */
  static Map<String, BigDecimal> back(ItemInHand item, Map<String, BigDecimal> kept) {
    List<Double> over =
        kept.entrySet().stream()
            .map(job -> item.packsOf(job.getKey()).subtract(job.getValue()).doubleValue())
            .toList();
    List<BigDecimal> shares = shares(item.packs().subtract(item.kept()), over);
    Map<String, BigDecimal> back = new TreeMap<>();
    kept.keySet().forEach(job -> back.put(job, shares.get(back.size())));
    return back;
  }

  private static List<BigDecimal> shares(BigDecimal total, List<Double> weights) {
    int scale = Math.max(total.scale(), weights.size() > 1 ? SHARE_DECIMALS : 0);
    return Shares.of(total, scale, weights).stream().map(KeptShares::plain).toList();
  }

  /** Returns a number of packs without idle zeros. */
  static BigDecimal plain(BigDecimal packs) {
    BigDecimal plain = packs.stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0) : plain;
  }
}
