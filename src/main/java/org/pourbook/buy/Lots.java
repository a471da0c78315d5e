package org.pourbook.buy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.OnOffer;
import org.pourbook.takeoff.TakeOff;

/** The lots of a batch: what jobs want, joined where they share a delivery (BUY-4). */
final class Lots {

  /** Materials as the job needs them, then extras by name. */
  static final Comparator<MaterialKey> TRADE_ORDER =
      Comparator.comparing(
              (MaterialKey key) ->
                  Material.named(key.material()).map(Material::ordinal).orElse(Integer.MAX_VALUE))
          .thenComparing(MaterialKey::material)
          .thenComparing(MaterialKey::size);

  /** Lots of one material and unit kind, for one shared delivery or one job. */
  private record LotKey(MaterialKey key, String unitKind, String job, Optional<Delivery> shared) {}

  private static final class Gathered {
    private final Wanted first;
    private final List<Portion> portions = new ArrayList<>();

    private Gathered(Wanted first) {
      this.first = first;
    }

    private Lot lot() {
      boolean service = first.planning() == Material.Planning.SERVICE;
      return new Lot(first.key(), first.planning(), service, first.isDelivered(), portions);
    }
  }

  private Lots() {}

  /** Returns the lots: by first job in the batch's order, then material and size. */
  static List<Lot> of(List<TakeOff> takeOffs, OnOffer prices) {
    Map<LotKey, Gathered> lots = new LinkedHashMap<>();
    for (TakeOff takeOff : takeOffs) {
      Wants.of(takeOff, prices).stream()
          .sorted(Comparator.comparing(Wanted::key, TRADE_ORDER))
          .forEach(wanted -> gather(wanted, lots));
    }
    return lots.values().stream().map(Gathered::lot).toList();
  }

  private static void gather(Wanted wanted, Map<LotKey, Gathered> lots) {
    for (Portion portion : wanted.portions()) {
      Delivery delivery = portion.delivery();
      LotKey key =
          new LotKey(
              wanted.key().normal(),
              wanted.unit().kind(),
              delivery.isShared() ? "" : portion.job().code(),
              delivery.isShared() ? Optional.of(delivery) : Optional.empty());
      lots.computeIfAbsent(key, k -> new Gathered(wanted)).portions.add(portion);
    }
  }
}
