package org.pourbook.buy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import org.pourbook.job.Job;
import org.pourbook.job.Setting;
import org.pourbook.takeoff.ConcreteNeed;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.Material.Planning;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.PieceNeed;

/** A material in a size that a job wants, gathered pour by pour. */
final class Wanted {

  private static final class Sum {
    private double net;
    private double needed;
    private final List<PieceNeed> pieces = new ArrayList<>();
    private Optional<ConcreteNeed> concrete = Optional.empty();
  }

  private final Job job;
  private final MaterialKey key;
  private final Planning planning;
  private final OwnUnit unit;
  private final int aheadDays;
  private final boolean delivered;
  private final TreeMap<Integer, Sum> byPour = new TreeMap<>();

  Wanted(
      Job job, MaterialKey key, Planning planning, OwnUnit unit, int aheadDays, boolean delivered) {
    this.job = job;
    this.key = key;
    this.planning = planning;
    this.unit = unit;
    this.aheadDays = aheadDays;
    this.delivered = delivered;
  }

  MaterialKey key() {
    return key;
  }

  Planning planning() {
    return planning;
  }

  OwnUnit unit() {
    return unit;
  }

  boolean isDelivered() {
    return delivered;
  }

  /** Adds an amount in the own unit. */
  void add(int pour, double amount, double allowancePercent) {
    Sum sum = sum(pour);
    double base = unit.toBase(amount);
    sum.net += base;
    sum.needed += base * (1 + allowancePercent / 100);
  }

  private LocalDate firstOfItsGroup(LocalDate date) {
    long together = (long) job.practice().number(Setting.DELIVER_TOGETHER);
    List<LocalDate> dates =
        byPour.keySet().stream()
            .map(pour -> job.pour(pour).date())
            .flatMap(Optional::stream)
            .sorted()
            .toList();
    LocalDate leader = dates.get(0);
    for (LocalDate next : dates) {
      if (next.isAfter(date)) {
        break;
      }
      if (next.isAfter(leader.plusDays(together))) {
        leader = next;
      }
    }
    return leader;
  }

  void add(PieceNeed piece) {
    sum(piece.pour()).pieces.add(piece);
  }

  /** Adds the concrete of a pour; its net holds the pump loss (CON-7). */
  void add(ConcreteNeed need) {
    Sum sum = sum(need.pour());
    sum.net += need.planM3() + need.pumpLossM3();
    sum.needed += need.allowedM3();
    sum.concrete = Optional.of(need);
  }

  private Sum sum(int pour) {
    return byPour.computeIfAbsent(pour, p -> new Sum());
  }

  boolean isAnything() {
    return byPour.values().stream().mapToDouble(sum -> sum.needed).sum() > 0
        || byPour.values().stream().anyMatch(sum -> !sum.pieces.isEmpty());
  }

  /** Returns what each pour wants. */
  List<Portion> portions() {
    List<Portion> portions = new ArrayList<>();
    byPour.forEach(
        (pour, sum) -> {
          double pieces =
              sum.pieces.stream().mapToDouble(p -> p.length().metres() * p.count()).sum();
          boolean fromPieces = sum.net <= 0 && pieces > 0;
          portions.add(
              new Portion(
                  job,
                  pour,
                  delivery(pour),
                  unit,
                  fromPieces ? pieces : sum.net,
                  fromPieces ? pieces : sum.needed,
                  0,
                  sum.pieces,
                  sum.concrete));
        });
    return portions;
  }

  /**
   * Returns where and when (BUY-4, BUY-5): what is not shared goes to the job's own site. Concrete
   * and services come with each pour; other goods of pours no further apart than Deliver together
   * come with the first of them, so that they pay one delivery and share packs.
   */
  private Delivery delivery(int pour) {
    Optional<LocalDate> own = job.pour(pour).date();
    Optional<LocalDate> first = planning.isOfGoods() ? own.map(this::firstOfItsGroup) : own;
    Optional<LocalDate> day = first.map(date -> WorkingDays.before(date, aheadDays));
    boolean mayShare =
        Material.named(key.material())
            .map(Material::isShareable)
            .orElse(planning != Planning.SERVICE);
    if (job.deliverTo().isEmpty() || !mayShare) {
      return new Delivery(job.code(), Optional.of(job.code()), day);
    }
    Optional<String> owner = day.isPresent() ? Optional.empty() : Optional.of(job.code());
    return new Delivery(job.deliverTo().get(), owner, day);
  }
}
