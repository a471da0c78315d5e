package org.pourbook.buy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.pourbook.job.Job;
import org.pourbook.measure.Money;

/**
 * What one supplier brings to one place on one day, before it is numbered and printed.
 *
 * @param supplier empty for materials without a price
 */
record OrderDraft(Optional<Supplier> supplier, Delivery delivery, List<Good> goods) {

  /** An item on the order. */
  record Good(Choice choice, Purchase purchase, BigDecimal packs, Money amount) {

    Lot lot() {
      return choice.lot();
    }

    /** Returns the amount each job bears, by need, to the cent (BUY-4). */
    Map<String, Money> byJob() {
      List<Job> jobs = lot().jobs();
      List<Money> shares = Shares.ofMoney(amount, lot().weights());
      Map<String, Money> byJob = new TreeMap<>();
      for (int i = 0; i < jobs.size(); i++) {
        byJob.put(jobs.get(i).code(), shares.get(i));
      }
      return byJob;
    }

    boolean isTaxable() {
      return purchase.price().map(Price::taxable).orElse(true);
    }
  }

  /** A fee, not taxed. */
  record Fee(String name, Money amount) {}

  /** Returns the jobs on the order, by code. */
  List<Job> jobs() {
    Map<String, Job> jobs = new TreeMap<>();
    goods.forEach(good -> good.lot().jobs().forEach(job -> jobs.put(job.code(), job)));
    return List.copyOf(jobs.values());
  }

  Money goodsAmount() {
    return Money.sum(goods.stream().map(Good::amount).toList());
  }

  boolean isComplete() {
    return goods.stream().allMatch(good -> good.purchase().price().isPresent());
  }

  /** Returns the pours of concrete that come with it. */
  List<PourOrder> pours() {
    return goods.stream()
        .flatMap(good -> good.choice().option().pours().stream())
        .filter(pour -> pour.portion().delivery().equals(delivery))
        .toList();
  }

  /** Returns the fees due: delivery, trucks, and what is missing to the minimum order. */
  List<Fee> fees() {
    if (supplier.isEmpty()) {
      return List.of();
    }
    List<LoadPlan> plans = pours().stream().map(PourOrder::plan).toList();
    List<Fee> fees = new ArrayList<>();
    fees.add(new Fee("delivery", deliveryFee()));
    fees.add(new Fee("short load", Money.sum(plans.stream().map(LoadPlan::shortFee).toList())));
    fees.add(new Fee("fee per load", Money.sum(plans.stream().map(LoadPlan::loadFee).toList())));
    fees.add(new Fee("minimum order", OrderFees.underMinimum(supplier.get(), goodsAmount())));
    return fees.stream().filter(fee -> !fee.amount().isZero()).toList();
  }

  /** Returns what the supplier takes to bring it. */
  Money deliveryFee() {
    boolean delivered = goods.stream().anyMatch(good -> good.lot().delivered());
    return supplier
        .map(from -> OrderFees.delivery(from, goodsAmount(), delivered))
        .orElse(Money.ZERO);
  }

  /** Returns whether all of it could come on another day: neither concrete nor work. */
  boolean isOfGoods() {
    return goods.stream().allMatch(good -> good.lot().isGoods());
  }

  Money feesAmount() {
    return Money.sum(fees().stream().map(Fee::amount).toList());
  }

  /** Returns the goods that each job bears. */
  Map<String, Money> goodsByJob() {
    return byJob(goods);
  }

  private static Map<String, Money> byJob(List<Good> goods) {
    Map<String, Money> byJob = new TreeMap<>();
    goods.forEach(good -> good.byJob().forEach((job, m) -> byJob.merge(job, m, Money::plus)));
    return byJob;
  }

  /** Returns the fees that each job bears, by its goods, to the cent. */
  Map<String, Money> feesByJob() {
    Map<String, Money> goodsByJob = goodsByJob();
    List<Double> weights =
        goodsByJob.values().stream().map(money -> money.amount().doubleValue()).toList();
    return named(goodsByJob, Shares.ofMoney(feesAmount(), weights));
  }

  /** Returns each job's part of the tax, unrounded (BUY-6): the job's rate, else the supplier's. */
  private Map<String, BigDecimal> exactTax() {
    Map<String, Money> taxed = byJob(goods.stream().filter(Good::isTaxable).toList());
    Map<String, BigDecimal> tax = new TreeMap<>();
    for (Job job : jobs()) {
      BigDecimal amount = taxed.getOrDefault(job.code(), Money.ZERO).amount();
      tax.put(job.code(), amount.multiply(SalesTax.percent(job, supplier)).movePointLeft(2));
    }
    return tax;
  }

  /** Returns the one rate of all its jobs. */
  Optional<BigDecimal> taxPercent() {
    List<BigDecimal> rates =
        jobs().stream()
            .map(job -> SalesTax.percent(job, supplier).stripTrailingZeros())
            .distinct()
            .toList();
    return supplier.isPresent() && rates.size() == 1 ? Optional.of(rates.get(0)) : Optional.empty();
  }

  /** Returns the tax, rounded once. */
  Money tax() {
    return Money.rounded(exactTax().values().stream().reduce(BigDecimal.ZERO, BigDecimal::add));
  }

  /** Returns the tax that each job bears, to the cent. */
  Map<String, Money> taxByJob() {
    Map<String, BigDecimal> exact = exactTax();
    List<Double> weights = exact.values().stream().map(BigDecimal::doubleValue).toList();
    return named(exact, Shares.ofMoney(tax(), weights));
  }

  private static Map<String, Money> named(Map<String, ?> jobs, List<Money> shares) {
    Map<String, Money> byJob = new TreeMap<>();
    jobs.keySet().forEach(job -> byJob.put(job, shares.get(byJob.size())));
    return byJob;
  }
}
