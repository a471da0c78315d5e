package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.pourbook.cut.FirstFitPlanner;
import org.pourbook.cut.OptimalPlanner;
import org.pourbook.job.ExtraKind;
import org.pourbook.measure.Length;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.Material.Planning;
import org.pourbook.takeoff.TakeOff;

/** An earlier order and its supplement bring together what the jobs need now, and little more. */
class SupplementProperties {

  private static final int RUNS = 150;

  /** Shares of packs are handed out to six decimals, amounts of material are sums of doubles. */
  private static final double SAME = 1e-5;

  private static final List<Run> ALL = runs();

  private record Run(
      List<TakeOff> before,
      List<TakeOff> now,
      PriceBook prices,
      Bought earlier,
      Bought fresh,
      Supplement supplement,
      String seed) {

    List<Pool> pools() {
      List<InHand> inAll = supplement.lines().stream().map(SupplementProperties::inAll).toList();
      return Pools.of(List.of(), Lots.of(now, prices), inAll);
    }
  }

  private static List<Run> runs() {
    List<Run> runs = new ArrayList<>();
    for (long seed = 1; seed <= RUNS; seed++) {
      List<Given> first = new RandomBatch(new SplittableRandom(seed)).jobs();
      List<Given> changed = new RandomBatch(new SplittableRandom(seed)).jobs();
      SplittableRandom random = new SplittableRandom(-seed);
      change(changed, random);
      RandomBatch books = new RandomBatch(random.split());
      PriceBook prices = books.prices();
      boolean more = random.nextInt(3) > 0;
      runs.add(
          run(
              takeOffs(more ? first : changed),
              takeOffs(more ? changed : first),
              prices,
              "seed " + seed));
    }
    return runs;
  }

  private static List<TakeOff> takeOffs(List<Given> jobs) {
    return jobs.stream().map(Given::takeOff).toList();
  }

  /** Adds needs to some jobs, and a job; the other way round they are taken out. */
  private static void change(List<Given> jobs, SplittableRandom random) {
    for (Given job : jobs) {
      if (random.nextBoolean()) {
        job.needs(Material.STAKE, "S", random.nextInt(1, 80));
      }
      if (random.nextBoolean()) {
        Length length = Length.ofInches(random.nextInt(24, 96));
        job.pieces(Material.FORM_BOARD, "2x6", length, random.nextInt(1, 9), "late side");
      }
      if (random.nextInt(3) == 0) {
        job.needs(Material.SAW_CUTTING, "", random.nextInt(1, 50));
      }
      if (random.nextInt(4) == 0) {
        job.extra("drain", "4 in", 1, "each", ExtraKind.SET_IN);
      }
    }
    if (random.nextBoolean()) {
      jobs.add(
          Given.job("LATE")
              .pour("2027-04-14")
              .deliverTo("yard")
              .needs(Material.NUT, "S", random.nextInt(1, 300))
              .pieces(Material.FORM_BOARD, "2x6", Length.ofInches(70), 3, "late job")
              .concrete(1, "3000 psi", 4, 4.4));
    }
  }

  private static Run run(List<TakeOff> before, List<TakeOff> now, PriceBook prices, String seed) {
    Bought earlier = Buyer.buy(before, prices, new FirstFitPlanner());
    Bought fresh = Buyer.buy(now, prices, new FirstFitPlanner());
    Supplement supplement = supplement(before, earlier, now, prices);
    return new Run(before, now, prices, earlier, fresh, supplement, seed);
  }

  private static Supplement supplement(
      List<TakeOff> before, Bought earlier, List<TakeOff> now, PriceBook prices) {
    List<InHand> inHand = earlier.lines().stream().map(SupplementProperties::inHand).toList();
    return SupplementBuyer.buy(
        new Earlier(before, prices, inHand, List.of(), earlier.orders().size()),
        now,
        prices,
        new FirstFitPlanner());
  }

  static InHand inHand(Line line) {
    return new InHand(
        line.job(),
        line.key(),
        line.unit(),
        line.price().map(Price::supplier).orElse(""),
        line.item(),
        line.orderUnit(),
        line.packHolds(),
        line.packs(),
        line.price().map(Price::price),
        line.amount());
  }

  private static InHand inAll(RevisedLine line) {
    return new InHand(
        line.job(),
        line.key(),
        line.unit(),
        line.supplier(),
        line.item(),
        line.orderUnit(),
        line.packHolds(),
        line.now(),
        line.unitPrice(),
        Optional.of(line.inAll()));
  }

  @Test
  void unchangedJobsOrderNothingAndSendNothingBack() {
    for (Run run : ALL) {
      Supplement same = supplement(run.before(), run.earlier(), run.before(), run.prices());
      assertEquals(List.of(), same.besides().orders(), run.seed());
      assertEquals(run.earlier().lines().size(), same.lines().size(), run.seed());
      for (RevisedLine line : same.lines()) {
        assertEquals(0, line.before().compareTo(line.now()), run.seed() + line);
        assertEquals(0, line.besides().signum() + line.back().signum(), run.seed() + line);
      }
    }
  }

  @Test
  void earlierAndSupplementMeetEveryNeedWithoutAPackTooMany() {
    int compared = 0;
    for (Run run : ALL) {
      for (Pool pool : run.pools()) {
        boolean counted = pool.now().stream().allMatch(lot -> lot.planning() != Planning.CUT);
        double needed = pool.now().stream().mapToDouble(Lot::needed).sum();
        double held =
            pool.items().stream().mapToDouble(i -> i.packs().doubleValue() * i.held()).sum();
        String told = run.seed() + " " + pool.jobs() + " " + pool.now();
        assertTrue(held >= needed - SAME, () -> told + " lacks " + (needed - held));
        if (counted && isChanged(run, pool)) {
          double pack = pool.items().stream().mapToDouble(ItemInHand::held).max().orElse(0);
          int deliveries = pool.now().stream().mapToInt(lot -> lot.deliveries().size()).sum();
          assertTrue(held - needed < pack * Math.max(1, deliveries) + SAME, () -> told);
          compared++;
        }
      }
    }
    assertTrue(compared > 100, "only " + compared);
  }

  private static boolean isChanged(Run run, Pool pool) {
    return run.supplement().lines().stream()
        .filter(line -> pool.jobs().contains(line.job()))
        .filter(line -> pool.now().stream().anyMatch(lot -> lot.key().equals(line.key())))
        .anyMatch(line -> line.standing().startsWith("changed"));
  }

  @Test
  void everyPieceCanBeCutFromWhatIsOrderedInAll() {
    int cut = 0;
    for (Run run : ALL) {
      for (Pool pool : run.pools()) {
        List<Portion> portions =
            pool.now().stream().flatMap(lot -> lot.portions().stream()).toList();
        if (pool.now().stream().anyMatch(Lot::hasPieces)) {
          List<StockInHand> stock = new ArrayList<>();
          for (ItemInHand item : pool.items()) {
            Length length = Length.ofMetres(item.held());
            int pieces = item.packs().setScale(4, RoundingMode.HALF_UP).intValue();
            stock.add(new StockInHand(item, length, pieces, 1));
          }
          Lot all = pool.now().get(0).withPortions(portions).withInHand(stock);
          String told = run.seed() + " " + all;
          assertTrue(CutOptions.fromHand(all, OptimalPlanner.usual()).isPresent(), told);
          cut++;
        }
      }
    }
    assertTrue(cut > 100, "only " + cut);
  }

  @Test
  void concreteInAllIsThatOfAFreshEstimate() {
    for (Run run : ALL) {
      Map<String, BigDecimal> inAll = new TreeMap<>();
      Map<String, BigDecimal> fresh = new TreeMap<>();
      for (RevisedLine line : run.supplement().lines()) {
        if (line.key().material().equals("concrete") && line.now().signum() > 0) {
          inAll.merge(line.job(), line.now(), BigDecimal::add);
        }
      }
      for (Line line : run.fresh().lines()) {
        if (line.key().material().equals("concrete")) {
          fresh.merge(line.job(), line.packs(), BigDecimal::add);
        }
      }
      assertEquals(fresh.keySet(), inAll.keySet(), run.seed());
      fresh.forEach(
          (job, packs) ->
              assertEquals(
                  packs.doubleValue(),
                  inAll.getOrDefault(job, BigDecimal.ZERO).doubleValue(),
                  SAME,
                  run.seed() + " " + job));
    }
  }

  @Test
  void rowsAddUp() {
    for (Run run : ALL) {
      Map<String, BigDecimal> moved = new TreeMap<>();
      for (RevisedLine line : run.supplement().lines()) {
        String told = run.seed() + " " + line;
        for (BigDecimal packs : List.of(line.before(), line.now(), line.besides(), line.back())) {
          assertTrue(packs.signum() >= 0, told);
        }
        assertEquals(0, line.besides().min(line.back()).signum(), told);
        assertTrue(line.credit().compareTo(Money.ZERO) >= 0, told);
        moved.merge(
            line.key() + " " + line.supplier() + " " + line.item(),
            line.before().add(line.besides()).subtract(line.back()).subtract(line.now()),
            BigDecimal::add);
      }
      moved.forEach((item, sum) -> assertEquals(0, sum.signum(), run.seed() + " " + item));
    }
  }

  @Test
  void moneyOfTheRowsIsThatOfTheOrders() {
    int orders = 0;
    for (Run run : ALL) {
      List<RevisedLine> lines = run.supplement().lines();
      Money rows = Money.sum(lines.stream().flatMap(line -> line.amount().stream()).toList());
      List<Order> made = run.supplement().besides().orders();
      assertEquals(Money.sum(made.stream().map(Order::goods).toList()), rows, run.seed());
      orders += made.size();
      String last = Orders.number(run.earlier().orders().size() - 1);
      made.forEach(order -> assertTrue(order.number().compareTo(last) > 0, run.seed()));
    }
    assertTrue(orders > 100, "only " + orders);
  }

  @Test
  void aSupplementRevisedWithoutAChangeOrdersNothing() {
    for (Run run : ALL) {
      List<InHand> inAll =
          run.supplement().lines().stream().map(SupplementProperties::inAll).toList();
      Supplement again =
          SupplementBuyer.buy(
              new Earlier(run.now(), run.prices(), inAll, List.of(), 0),
              run.now(),
              run.prices(),
              new FirstFitPlanner());
      assertEquals(List.of(), again.besides().orders(), run.seed());
      Money before = Money.sum(run.supplement().lines().stream().map(RevisedLine::inAll).toList());
      Money after = Money.sum(again.lines().stream().map(RevisedLine::inAll).toList());
      assertEquals(before, after, run.seed());
    }
  }
}
