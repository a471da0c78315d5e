package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.job.Practice;
import org.pourbook.job.Setting;

/** The ways to have ready-mixed concrete brought (CON-7, CON-8): one a supplier and item. */
final class ConcreteOptions {

  private ConcreteOptions() {}

  /** Returns an option a supplier, its cheapest item; one without a price if there is none. */
  static List<Option> of(Lot lot, PriceBook prices) {
    Map<String, Option> cheapest = new LinkedHashMap<>();
    for (Offer offer : Offer.of(prices.answering(lot.key()))) {
      Option option = option(lot, offer, prices.supplierOf(offer.first()));
      cheapest.merge(offer.supplier(), option, ConcreteOptions::cheaper);
    }
    return cheapest.isEmpty() ? List.of(unpriced(lot)) : List.copyOf(cheapest.values());
  }

  private static Option cheaper(Option first, Option second) {
    return second.goods().compareTo(first.goods()) < 0 ? second : first;
  }

  private static Option option(Lot lot, Offer offer, Supplier supplier) {
    double held = OrderUnits.held(offer.first(), lot.key(), lot.unit());
    List<PourOrder> pours = pours(lot, supplier);
    Map<Delivery, BigDecimal> packs = packs(pours, held);
    BigDecimal total = packs.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    Price price = offer.at(total);
    Purchase purchase =
        new Purchase(
            Optional.of(price), price.item(), held, price.orderUnit(), lot.needed(), packs);
    return new Option(Optional.of(supplier), List.of(purchase), Optional.empty(), pours, List.of());
  }

  private static Option unpriced(Lot lot) {
    Supplier unknown = Supplier.named("", lot.portions().get(0).job().place());
    List<PourOrder> pours = pours(lot, unknown);
    double held = lot.unit().toBase(1);
    Purchase purchase =
        new Purchase(
            Optional.empty(), "", held, lot.unit().label(), lot.needed(), packs(pours, held));
    return new Option(Optional.empty(), List.of(purchase), Optional.empty(), pours, List.of());
  }

  private static Map<Delivery, BigDecimal> packs(List<PourOrder> pours, double held) {
    Map<Delivery, BigDecimal> packs = new LinkedHashMap<>();
    for (PourOrder pour : pours) {
      packs.merge(
          pour.portion().delivery(), Packs.ratio(pour.plan().orderM3(), held), BigDecimal::add);
    }
    return packs;
  }

  private static List<PourOrder> pours(Lot lot, Supplier supplier) {
    List<PourOrder> pours = new ArrayList<>();
    for (Portion portion : lot.portions()) {
      Practice practice = portion.job().practice();
      double step = or(supplier.orderStepM3(), practice, Setting.ORDER_STEP);
      double truck = or(supplier.loadSizeM3(), practice, Setting.LOAD_SIZE);
      double largest = Math.min(truck, PlacingTimes.of(portion, supplier).largestLoadM3());
      LoadPlan plan = LoadPlans.cheaper(portion.needed(), step, largest, supplier);
      pours.add(new PourOrder(portion, plan));
    }
    return pours;
  }

  /** Returns a supplier's own figure, else the setting. */
  static double or(OptionalDouble own, Practice practice, Setting setting) {
    return own.orElseGet(() -> practice.number(setting));
  }
}
