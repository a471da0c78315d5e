package org.pourbook.buy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.pourbook.job.Job;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.OnOffer;
import org.pourbook.takeoff.TakeOff;

/**
 * A line that a builder asks for: what a job wants of a material in a size, with its allowance.
 *
 * @param amount in {@code unit}, the material's own in the job's system
 * @param brought goods, not work done
 * @param neededBy the first day on which some of it is needed
 * @param days all days on which some of it is needed
 */
public record Asked(
    String job,
    MaterialKey key,
    String unit,
    double amount,
    boolean brought,
    String deliverTo,
    Optional<LocalDate> neededBy,
    List<LocalDate> days) {
  public Asked {
    days = List.copyOf(days);
  }

  /** Decimals of an amount that tell requests apart. */
  private static final int DECIMALS = 6;

  /** What tells lines apart. */
  record Key(String job, MaterialKey material, String unitKind) {
    static Key of(Job job, Lot lot) {
      return new Key(job.code(), lot.key().normal(), lot.unit().kind());
    }
  }

  /** Returns the lines by job in the batch's order, then material and size. */
  static Map<Key, Asked> byKey(List<TakeOff> takeOffs, Function<Job, OnOffer> sizes) {
    Map<Key, Asked> all = new LinkedHashMap<>();
    for (TakeOff takeOff : takeOffs) {
      Job job = takeOff.job();
      Map<Key, List<Lot>> lots = new LinkedHashMap<>();
      Lots.of(List.of(takeOff), sizes.apply(job))
          .forEach(lot -> lots.computeIfAbsent(Key.of(job, lot), k -> new ArrayList<>()).add(lot));
      lots.entrySet().stream()
          .sorted(Comparator.comparing(entry -> entry.getValue().get(0).key(), Lots.TRADE_ORDER))
          .forEach(entry -> all.put(entry.getKey(), asked(job, entry.getValue())));
    }
    return all;
  }

  private static Asked asked(Job job, List<Lot> lots) {
    Lot first = lots.get(0);
    List<Portion> portions = lots.stream().flatMap(lot -> lot.portions().stream()).toList();
    OwnUnit unit = portions.get(0).unit();
    List<Delivery> deliveries =
        portions.stream().map(Portion::delivery).distinct().sorted().toList();
    return new Asked(
        job.code(),
        first.key(),
        unit.label(),
        Packs.exact(unit.fromBase(portions.stream().mapToDouble(Portion::needed).sum()))
            .doubleValue(),
        first.delivered(),
        deliveries.get(0).deliverTo(),
        deliveries.get(0).day(),
        deliveries.stream().flatMap(delivery -> delivery.day().stream()).toList());
  }

  /** Returns the line in words that are the same for the same line, whoever is asked. */
  public String inWords() {
    String rounded =
        BigDecimal.valueOf(amount)
            .setScale(DECIMALS, RoundingMode.HALF_UP)
            .stripTrailingZeros()
            .toPlainString();
    MaterialKey same = key.normal();
    return String.join(
        "\t", job, same.material(), same.size(), rounded, unit, deliverTo, days.toString());
  }
}
