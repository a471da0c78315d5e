package org.pourbook.buy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.pourbook.job.Job;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

/** Drafts numbered and worded as orders. */
final class Orders {

  private Orders() {}

  /**
   * Returns the orders, numbered in the order of the drafts.
   *
   * @param after how many orders were numbered before
   * @param alone the ways to meet a lot, for what sharing saves
   */
  static List<Order> of(List<OrderDraft> drafts, int after, Alone alone) {
    List<Optional<Money>> savings =
        drafts.parallelStream().map(draft -> SharedSaving.of(draft, alone)).toList();
    List<Order> orders = new ArrayList<>();
    for (OrderDraft draft : drafts) {
      int sofar = orders.size();
      orders.add(order(number(after + sofar), draft, savings.get(sofar)));
    }
    return orders;
  }

  /** Returns the number of the order at an index. */
  static String number(int index) {
    return String.format(Locale.ROOT, "PB-%03d", index + 1);
  }

  private static Order order(String number, OrderDraft draft, Optional<Money> saving) {
    Money goods = draft.goodsAmount();
    Money fees = draft.feesAmount();
    Money tax = draft.tax();
    List<String> jobs = codes(draft.jobs());
    return new Order(
        number,
        draft.supplier(),
        draft.delivery().deliverTo(),
        site(draft),
        jobs,
        draft.delivery().day(),
        lines(draft, jobs),
        goods,
        fees,
        draft.taxPercent(),
        tax,
        goods.plus(fees).plus(tax),
        draft.isComplete(),
        OrderNotes.of(draft, saving));
  }

  private static String site(OrderDraft draft) {
    boolean ownSite = draft.delivery().job().equals(Optional.of(draft.delivery().deliverTo()));
    return ownSite ? draft.jobs().get(0).site() : draft.delivery().deliverTo();
  }

  private static List<String> codes(List<Job> jobs) {
    return jobs.stream().map(Job::code).toList();
  }

  private static List<Order.OrderLine> lines(OrderDraft draft, List<String> jobs) {
    List<Order.OrderLine> lines = new ArrayList<>();
    Map<Integer, Optional<LocalDate>> orderBy = new HashMap<>();
    for (OrderDraft.Good good : draft.goods()) {
      List<String> ofGood = codes(good.lot().jobs());
      Optional<LocalDate> day =
          orderBy.computeIfAbsent(
              good.purchase().price().map(Price::leadDays).orElse(0),
              lead -> draft.delivery().day().map(by -> WorkingDays.before(by, lead)));
      lines.add(goods(lines.size() + 1, good, day, ofGood.equals(jobs) ? jobs : ofGood));
    }
    for (OrderDraft.Fee fee : draft.fees()) {
      lines.add(fee(lines.size() + 1, fee, jobs));
    }
    return lines;
  }

  private static Order.OrderLine goods(
      int number, OrderDraft.Good good, Optional<LocalDate> orderBy, List<String> jobs) {
    Optional<Price> price = good.purchase().price();
    return new Order.OrderLine(
        number,
        false,
        jobs,
        good.lot().key(),
        good.purchase().item(),
        price.map(Price::description).orElse(""),
        orderBy,
        good.packs(),
        good.purchase().orderUnit(),
        price.map(Price::price),
        price.map(row -> good.amount()),
        good.isTaxable());
  }

  private static Order.OrderLine fee(int number, OrderDraft.Fee fee, List<String> jobs) {
    return new Order.OrderLine(
        number,
        true,
        jobs,
        new MaterialKey(fee.name(), ""),
        "",
        "",
        Optional.empty(),
        BigDecimal.ONE,
        "each",
        Optional.of(fee.amount().amount()),
        Optional.of(fee.amount()),
        false);
  }
}
