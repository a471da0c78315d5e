package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Choices gathered into orders: one a supplier, place and day. */
final class OrderDrafts {

  private static final Comparator<OrderDraft> ORDER =
      Comparator.comparing((OrderDraft draft) -> draft.delivery().day().isEmpty())
          .thenComparing(draft -> draft.delivery().day().map(Object::toString).orElse(""))
          .thenComparing(draft -> draft.supplier().isEmpty())
          .thenComparing(draft -> draft.supplier().map(Supplier::name).orElse(""))
          .thenComparing(OrderDraft::delivery);

  private record Key(String supplier, Delivery delivery) {}

  private OrderDrafts() {}

  /** Returns the orders by day, supplier and place; undated last, unpriced last of a day. */
  static List<OrderDraft> of(List<Choice> choices) {
    Map<Key, OrderDraft> drafts = new LinkedHashMap<>();
    for (Choice choice : choices) {
      for (Purchase purchase : choice.option().purchases()) {
        purchase
            .amounts()
            .forEach(
                (delivery, amount) -> {
                  Optional<Supplier> supplier = choice.option().supplier();
                  Key key = new Key(supplier.map(Supplier::name).orElse(""), delivery);
                  drafts
                      .computeIfAbsent(
                          key, k -> new OrderDraft(supplier, delivery, new ArrayList<>()))
                      .goods()
                      .add(
                          new OrderDraft.Good(
                              choice,
                              purchase,
                              purchase.packs().getOrDefault(delivery, BigDecimal.ZERO),
                              amount));
                });
      }
    }
    return drafts.values().stream().sorted(ORDER).toList();
  }
}
