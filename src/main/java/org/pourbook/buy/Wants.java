package org.pourbook.buy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.job.Extra;
import org.pourbook.job.ExtraKind;
import org.pourbook.job.Job;
import org.pourbook.job.Practice;
import org.pourbook.job.Setting;
import org.pourbook.measure.Dimension;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.ConcreteNeed;
import org.pourbook.takeoff.Joined;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.Material.Planning;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.OnOffer;
import org.pourbook.takeoff.PieceNeed;
import org.pourbook.takeoff.Quantity;
import org.pourbook.takeoff.TakeOff;

/** What a job wants to buy (BUY-1): its quantities, pieces, concrete and extras, by material. */
final class Wants {

  /** Working days ahead of the pour of what no material says (BUY-5). */
  private static final int USUAL_AHEAD_DAYS = 2;

  /** Rule of the quantity rows that stand for extras. */
  private static final String EXTRA = "EXTRA";

  private final Job job;
  private final OnOffer prices;
  private final Map<String, Wanted> wanted = new LinkedHashMap<>();

  private Wants(Job job, OnOffer prices) {
    this.job = job;
    this.prices = prices;
  }

  /** Returns the job's wants, in take-off order. */
  static List<Wanted> of(TakeOff takeOff, OnOffer prices) {
    Wants wants = new Wants(takeOff.job(), prices);
    takeOff.concrete().forEach(wants::addConcrete);
    takeOff.quantities().forEach(wants::addQuantity);
    takeOff.pieces().forEach(wants::addPiece);
    wants.job.extras().forEach(wants::addExtra);
    return wants.wanted.values().stream().filter(Wanted::isAnything).toList();
  }

  private void addConcrete(ConcreteNeed need) {
    if (need.bagged()) {
      Wanted bags = known(Material.BAGGED_CONCRETE, Material.BAGGED_CONCRETE.of(bagSize()));
      bags.add(need);
    } else {
      known(Material.CONCRETE, Material.CONCRETE.of(need.mix())).add(need);
    }
  }

  /** Returns the size of bag: 80 lb, unless only others are sold. */
  private String bagSize() {
    List<String> sizes = prices.sizes(Material.BAGGED_CONCRETE.label());
    boolean usual =
        sizes.isEmpty()
            || sizes.stream()
                .map(MaterialKey::normal)
                .anyMatch(size -> size.isEmpty() || size.equals("80lb"));
    return usual ? "80 lb" : sizes.get(0);
  }

  /**
   * Adds a quantity. Ready-mixed and bagged concrete come from the concrete needs instead, extras
   * from the job, which knows their kind.
   */
  private void addQuantity(Quantity quantity) {
    if (quantity.material().isEmpty() || quantity.rule().equals(EXTRA)) {
      return;
    }
    MaterialKey key = quantity.material().get();
    Material material =
        Material.named(key.material())
            .orElseThrow(() -> new IllegalArgumentException("no such material: " + key));
    if (material == Material.CONCRETE || material == Material.BAGGED_CONCRETE) {
      return;
    }
    double allowance = quantity.allowancePercent().orElse(allowancePercent(material));
    known(material, key).add(quantity.pour(), quantity.amount(), allowance);
  }

  private double allowancePercent(Material material) {
    return switch (material.planning()) {
      case CUT, STRIPS, BY_POUR -> 0;
      case COUNTED, SERVICE ->
          job.practice()
              .allowancePercent(material.label())
              .orElse((double) material.allowancePercent());
    };
  }

  private void addPiece(PieceNeed piece) {
    Material material = Material.named(piece.material().material()).orElseThrow();
    known(material, piece.material()).add(piece);
  }

  private Wanted known(Material material, MaterialKey key) {
    OwnUnit unit = OwnUnit.of(material, job.units());
    return wanted.computeIfAbsent(
        key.normal() + "|" + unit.kind(),
        k -> {
          int ahead = aheadDays(material.label(), material.planning(), material.aheadOfPourDays());
          boolean delivered = material.planning() != Planning.SERVICE;
          return new Wanted(job, key, material.planning(), unit, ahead, delivered);
        });
  }

  /** Adds an extra: to a known material where its unit converts, else under its own name. */
  private void addExtra(Extra extra) {
    if (extra.kind() == ExtraKind.CHECK) {
      return;
    }
    MaterialKey key = new MaterialKey(extra.what(), extra.size());
    OwnUnit written = OwnUnit.written(extra.unit());
    Optional<Material> material = Material.named(extra.what()).filter(m -> converts(m, written));
    if (material.isEmpty()) {
      other(extra, key, written).add(extra.pour(), extra.quantity(), 0);
    } else if (material.get().planning() == Planning.CUT) {
      addLengths(extra, material.get(), key, written);
    } else {
      Wanted known = known(material.get(), key);
      known.add(extra.pour(), known.unit().fromBase(written.toBase(extra.quantity())), 0);
    }
  }

  private boolean converts(Material material, OwnUnit written) {
    boolean pieces = written.kind().equals(Dimension.COUNT.name());
    return written.kind().equals(OwnUnit.of(material, job.units()).kind())
        || (material.planning() == Planning.CUT && pieces);
  }

  /**
   * Adds boards or bars of which only a length or a count is known: whole stock, then the rest. A
   * length may come in other pieces, no more of them.
   */
  private void addLengths(Extra extra, Material material, MaterialKey key, OwnUnit written) {
    Length stock =
        prices.longestStock(key).orElse(StockLengths.longestUsual(material, job.units()));
    String goesTo = extra.notes().isEmpty() ? "extra" : extra.notes();
    boolean pieces = written.kind().equals(Dimension.COUNT.name());
    Length total =
        pieces
            ? stock.times((long) Math.ceil(extra.quantity()))
            : Length.ofMetres(written.toBase(extra.quantity()));
    Wanted cut = known(material, key);
    cut.add(extra.pour(), cut.unit().fromBase(total.metres()), 0);
    int whole = total.floorDiv(stock);
    Length rest = total.minus(stock.times(whole));
    Optional<Joined> joined =
        whole > 0 && rest.isPositive()
            ? Optional.of(
                new Joined(total, whole, Length.ZERO, shortest(material).min(rest), stock, 1))
            : Optional.empty();
    if (whole > 0) {
      cut.add(new PieceNeed(key, stock, whole, goesTo, "", extra.pour(), joined));
    }
    if (rest.isPositive()) {
      cut.add(new PieceNeed(key, rest, 1, goesTo, "", extra.pour(), joined));
    }
  }

  private Length shortest(Material material) {
    boolean bar = material == Material.BAR;
    return job.practice().length(bar ? Setting.SHORTEST_BAR : Setting.SHORTEST_BOARD);
  }

  /**
   * Returns the working days ahead of the pour (BUY-5): concrete, rents and services are no goods.
   */
  private int aheadDays(String material, Planning planning, int usual) {
    Practice practice = job.practice();
    return (planning.isOfGoods()
            ? practice.goodsAheadOfPourDays(material)
            : practice.aheadOfPourDays(material))
        .orElse(usual);
  }

  private Wanted other(Extra extra, MaterialKey key, OwnUnit unit) {
    boolean service = extra.kind() == ExtraKind.SERVICE;
    boolean rent = extra.kind() == ExtraKind.RENT;
    Planning planning = service || rent ? Planning.SERVICE : Planning.COUNTED;
    return wanted.computeIfAbsent(
        key.normal() + "|" + unit.kind(),
        k -> {
          int ahead = aheadDays(extra.what(), planning, service ? 0 : USUAL_AHEAD_DAYS);
          return new Wanted(job, key, planning, unit, ahead, !service);
        });
  }
}
