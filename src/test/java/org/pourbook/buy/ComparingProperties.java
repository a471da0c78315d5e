package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

/** The best split beside every assignment of lines to suppliers, on small random quotations. */
class ComparingProperties {

  private static final int SEEDS = 300;

  private static Money money(long cents) {
    return Money.ofCents(cents);
  }

  private static Quotation.Row row(
      String job, String material, long cents, Optional<LocalDate> day, boolean missing) {
    return new Quotation.Row(
        job,
        new MaterialKey(material, ""),
        OptionalDouble.of(1),
        "each",
        "",
        missing ? BigDecimal.ZERO : BigDecimal.ONE,
        "each",
        money(missing ? 0 : cents),
        cents % 3 > 0,
        new BigDecimal("6.5"),
        Money.ZERO,
        job,
        day,
        true,
        missing);
  }

  private static List<Quotation> quotations(SplittableRandom random) {
    int lines = random.nextInt(1, 6);
    List<Optional<LocalDate>> days = new ArrayList<>();
    for (int line = 0; line < lines; line++) {
      days.add(Optional.of(LocalDate.of(2027, 5, random.nextInt(3, 5))));
    }
    Map<String, Money> another =
        random.nextBoolean() ? Map.of() : Map.of("A", money(random.nextInt(3000)));
    List<Quotation> quotations = new ArrayList<>();
    int suppliers = random.nextInt(2, 5);
    for (int i = 0; i < suppliers; i++) {
      List<Quotation.Row> rows = new ArrayList<>();
      for (int line = 0; line < lines; line++) {
        boolean missing = random.nextInt(5) == 0;
        rows.add(row("A", "thing " + line, 1000 + random.nextInt(9000), days.get(line), missing));
      }
      Supplier supplier =
          Supplier.quoting(
              "S" + i,
              Optional.of(money(random.nextInt(4000))),
              random.nextBoolean() ? Optional.of(money(random.nextInt(20000))) : Optional.empty(),
              random.nextInt(3) == 0 ? Optional.of(money(random.nextInt(9000))) : Optional.empty(),
              Given.HERE);
      quotations.add(new Quotation(supplier, Optional.empty(), "r", "USD", another, rows));
    }
    return quotations;
  }

  /**
   * Returns the cheapest total over all assignments, fees and tax added up in its own way [cents].
   */
  private static double cheapest(List<Quotation> all, int line, int[] chosen) {
    if (line == chosen.length) {
      return total(all, chosen);
    }
    double best = Double.MAX_VALUE;
    boolean offered = false;
    for (int i = 0; i < all.size(); i++) {
      if (!all.get(i).rows().get(line).missing()) {
        offered = true;
        chosen[line] = i;
        best = Math.min(best, cheapest(all, line + 1, chosen));
      }
    }
    chosen[line] = -1;
    return offered ? best : cheapest(all, line + 1, chosen);
  }

  private static double total(List<Quotation> all, int[] chosen) {
    double cents = 0;
    Map<String, Long> goods = new HashMap<>();
    for (int line = 0; line < chosen.length; line++) {
      if (chosen[line] >= 0) {
        Quotation.Row row = all.get(chosen[line]).rows().get(line);
        cents += row.amount().cents() * (row.taxable() ? 1.065 : 1);
        goods.merge(chosen[line] + " " + row.neededBy(), row.amount().cents(), Long::sum);
      }
    }
    for (Map.Entry<String, Long> stop : goods.entrySet()) {
      Supplier from = all.get(stop.getKey().charAt(0) - '0').supplier();
      long free = from.freeFrom().map(Money::cents).orElse(Long.MAX_VALUE);
      cents += all.get(0).anotherStop().getOrDefault("A", Money.ZERO).cents();
      cents += stop.getValue() < free ? from.deliveryFee().map(Money::cents).orElse(0L) : 0;
      cents += Math.max(0, from.minimumOrder().map(Money::cents).orElse(0L) - stop.getValue());
    }
    return cents;
  }

  @Test
  void theBestSplitIsTheCheapestOfAllAssignments() {
    for (long seed = 1; seed <= SEEDS; seed++) {
      List<Quotation> all = quotations(new SplittableRandom(seed));
      Compared compared = Comparing.compare(all);
      Compared.Way split = compared.ways().get(all.size());
      double best = cheapest(all, 0, new int[all.get(0).rows().size()]);
      // Tax is rounded once a delivery: half a cent for each of at most eight.
      assertEquals(best, split.weighed().cents(), 4, "seed " + seed);
      assertTrue(
          split.says().startsWith("exact: no split of the lines costs less"), "seed " + seed);
    }
  }

  @Test
  void theSplitsLinesAddUpToItsGoods() {
    for (long seed = 1; seed <= SEEDS; seed++) {
      Compared compared = Comparing.compare(quotations(new SplittableRandom(seed)));
      Compared.Way split = compared.ways().get(compared.suppliers().size());
      Money lines = Money.sum(compared.split().stream().map(Compared.Taken::amount).toList());
      assertEquals(split.goods(), lines, "seed " + seed);
      long nobody = compared.split().stream().filter(line -> line.supplier().isEmpty()).count();
      assertEquals(split.missing(), nobody, "seed " + seed);
    }
  }

  @Test
  void noWayThatMissesNothingCostsLessThanTheSplit() {
    int compared = 0;
    for (long seed = 1; seed <= SEEDS; seed++) {
      List<Quotation> all = quotations(new SplittableRandom(seed));
      List<Compared.Way> ways = Comparing.compare(all).ways();
      Compared.Way split = ways.get(all.size());
      for (Compared.Way way : ways) {
        if (way.missing() == split.missing()) {
          compared++;
          assertTrue(way.weighed().cents() + 8 >= split.weighed().cents(), "seed " + seed);
        }
      }
    }
    assertTrue(compared > SEEDS, "only " + compared);
  }
}
