package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.pourbook.cut.FirstFitPlanner;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.TakeOff;

class BuyerProperties {

  private static final int RUNS = 100;

  private static final List<Run> ALL = runs();

  /** A batch, what was bought for it, and how to find it again. */
  private record Run(List<TakeOff> takeOffs, PriceBook prices, Bought bought, String seed) {}

  private static List<Run> runs() {
    List<Run> runs = new ArrayList<>();
    for (long seed = 1; seed <= RUNS; seed++) {
      RandomBatch random = new RandomBatch(new SplittableRandom(seed));
      List<TakeOff> takeOffs = random.jobs().stream().map(Given::takeOff).toList();
      PriceBook prices = random.prices();
      Bought bought = Buyer.buy(takeOffs, prices, new FirstFitPlanner());
      runs.add(new Run(takeOffs, prices, bought, "seed " + seed));
    }
    return runs;
  }

  private static Money sum(Stream<Money> money) {
    return Money.sum(money.toList());
  }

  @Test
  void linesAddUpToTheJobsTotalsAndTheseToTheOrders() {
    for (Run run : ALL) {
      Bought bought = run.bought();
      for (JobTotals totals : bought.totals()) {
        assertEquals(
            totals.materials().plus(totals.services()),
            sum(
                bought.lines().stream()
                    .filter(line -> line.job().equals(totals.job()))
                    .flatMap(line -> line.amount().stream())),
            run.seed());
        assertEquals(
            totals.total(),
            totals
                .materials()
                .plus(totals.services())
                .plus(totals.deliveryAndFees())
                .plus(totals.tax()),
            run.seed());
      }
      same(run, JobTotals::deliveryAndFees, Order::fees);
      same(run, JobTotals::tax, Order::tax);
      same(run, JobTotals::total, Order::total);
    }
  }

  private static void same(
      Run run, Function<JobTotals, Money> ofJob, Function<Order, Money> ofOrder) {
    assertEquals(
        sum(run.bought().totals().stream().map(ofJob)),
        sum(run.bought().orders().stream().map(ofOrder)),
        run.seed());
  }

  @Test
  void anOrdersLinesAddUpToItsGoodsAndFees() {
    for (Run run : ALL) {
      for (Order order : run.bought().orders()) {
        for (boolean fee : List.of(true, false)) {
          assertEquals(
              fee ? order.fees() : order.goods(),
              sum(
                  order.lines().stream()
                      .filter(line -> line.fee() == fee)
                      .flatMap(line -> line.amount().stream())),
              run.seed());
        }
        assertEquals(order.total(), order.goods().plus(order.fees()).plus(order.tax()), run.seed());
      }
    }
  }

  @Test
  void jobsSharesOfOrderUnitsAddUpToTheOrders() {
    for (Run run : ALL) {
      BigDecimal ofJobs =
          run.bought().lines().stream().map(Line::packs).reduce(BigDecimal.ZERO, BigDecimal::add);
      BigDecimal ofOrders =
          run.bought().orders().stream()
              .flatMap(order -> order.lines().stream())
              .filter(line -> !line.fee())
              .map(Order.OrderLine::packs)
              .reduce(BigDecimal.ZERO, BigDecimal::add);
      assertEquals(0, ofJobs.compareTo(ofOrders), run.seed());
    }
  }

  @Test
  void wholePacksHoldWhatIsNeededAndOneFewerDoNot() {
    for (Run run : ALL) {
      for (Lot lot : Lots.of(run.takeOffs(), run.prices())) {
        if (lot.planning() == Material.Planning.COUNTED) {
          for (Option option : CountedOptions.of(lot, run.prices())) {
            Purchase bought = option.purchases().get(0);
            double packs = bought.totalPacks().doubleValue();
            assertTrue(packs * bought.held() > lot.needed() - 1e-6, run.seed());
            assertTrue((packs - 1) * bought.held() < lot.needed(), run.seed());
          }
        }
      }
    }
  }

  @Test
  void theOrderOfTheJobsDoesNotMatter() {
    for (Run run : ALL) {
      List<TakeOff> turned = new ArrayList<>(run.takeOffs());
      Collections.reverse(turned);
      Bought other = Buyer.buy(turned, run.prices(), new FirstFitPlanner());
      Comparator<JobTotals> byJob = Comparator.comparing(JobTotals::job);
      assertEquals(
          run.bought().totals().stream().sorted(byJob).toList(),
          other.totals().stream().sorted(byJob).toList(),
          run.seed());
    }
  }

  @Test
  void jobsAtTheirOwnSitesAreBoughtTogetherAsApart() {
    for (Run run : ALL) {
      List<TakeOff> apart =
          run.takeOffs().stream().filter(one -> one.job().deliverTo().isEmpty()).toList();
      List<Line> lines = new ArrayList<>();
      for (TakeOff one : apart) {
        lines.addAll(Buyer.buy(List.of(one), run.prices(), new FirstFitPlanner()).lines());
      }
      Bought together = Buyer.buy(apart, run.prices(), new FirstFitPlanner());
      assertEquals(text(lines), text(together.lines()), run.seed());
    }
  }

  private static List<String> text(List<Line> lines) {
    return lines.stream()
        .map(line -> line.job() + " " + line.key() + " " + line.packs() + " " + line.amount())
        .toList();
  }

  @Test
  void theNumberOfCoresChangesNothing() throws Exception {
    for (Run run : ALL.subList(0, 20)) {
      for (int cores : new int[] {1, 2, 7}) {
        ForkJoinPool pool = new ForkJoinPool(cores);
        try {
          Bought again =
              pool.submit(() -> Buyer.buy(run.takeOffs(), run.prices(), new FirstFitPlanner()))
                  .get();
          assertEquals(run.bought(), again, run.seed() + ", " + cores + " cores");
        } finally {
          pool.shutdown();
        }
      }
    }
  }
}
