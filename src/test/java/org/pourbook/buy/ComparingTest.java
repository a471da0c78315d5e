package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.pourbook.buy.Given.job;
import static org.pourbook.buy.Given.price;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.pourbook.cut.FirstFitPlanner;
import org.pourbook.job.ExtraKind;
import org.pourbook.measure.Money;
import org.pourbook.takeoff.MaterialKey;

class ComparingTest {

  private static final Optional<LocalDate> MONDAY = Optional.of(LocalDate.of(2027, 5, 3));

  private static Quotation of(String name, String fee, Quotation.Row... rows) {
    Supplier supplier =
        Supplier.quoting(
            name,
            Optional.of(Money.rounded(new BigDecimal(fee))),
            Optional.empty(),
            Optional.empty(),
            Given.HERE);
    return new Quotation(supplier, Optional.empty(), "r", "USD", Map.of(), List.of(rows));
  }

  private static Quotation.Row row(
      String job, String material, String size, double asked, String amount, String deliverTo) {
    boolean missing = amount.isEmpty();
    return new Quotation.Row(
        job,
        new MaterialKey(material, size),
        OptionalDouble.of(asked),
        "each",
        "",
        missing || amount.equals("0") ? BigDecimal.ZERO : BigDecimal.ONE,
        "each",
        Money.rounded(new BigDecimal(missing ? "0" : amount)),
        false,
        BigDecimal.ZERO,
        Money.ZERO,
        deliverTo,
        MONDAY,
        true,
        missing);
  }

  private static Quotation.Row row(String material, String amount) {
    return row("A", material, "", 1, amount, "A");
  }

  private static List<String> totals(Compared compared) {
    return compared.ways().stream()
        .map(way -> way.name() + " " + way.total() + " missing " + way.missing())
        .toList();
  }

  @Test
  void aSplitIsTakenOnlyWhereItPaysItsSecondDelivery() {
    // All near 200 + 10; all far 200 + 12; split 90 + 100 + 10 + 12 = 212.
    assertEquals(
        List.of(
            "all from near 210.00 missing 0",
            "all from far 212.00 missing 0",
            "best split 210.00 missing 0"),
        totals(
            Comparing.compare(
                List.of(
                    of("near", "10", row("nut", "100"), row("bolt", "100")),
                    of("far", "12", row("nut", "90"), row("bolt", "110"))))));
    assertEquals(
        "best split 193.00 missing 0",
        totals(
                Comparing.compare(
                    List.of(
                        of("near", "2", row("nut", "100"), row("bolt", "100")),
                        of("far", "1", row("nut", "90"), row("bolt", "110")))))
            .get(2));
  }

  @Test
  void linesThatSomebodyLacksAreCountedAndComeFromTheOther() {
    Compared compared =
        Comparing.compare(
            List.of(
                of("near", "10", row("nut", ""), row("bolt", "100"), row("saw", "")),
                of("far", "5", row("nut", "90"), row("bolt", ""), row("saw", ""))));
    assertEquals(
        List.of(
            "all from near 110.00 missing 2",
            "all from far 95.00 missing 2",
            "best split 205.00 missing 1"),
        totals(compared));
    assertEquals(
        List.of("far", "near", ""),
        compared.split().stream().map(Compared.Taken::supplier).toList());
    assertEquals(Optional.empty(), compared.lines().get(2).best());
  }

  @Test
  void sharesOfOneDeliveryGoToOneSupplier() {
    // Line by line A's share costs less at near, B's at far; the boxes they share cannot be parted.
    Compared compared =
        Comparing.compare(
            List.of(
                of(
                    "near",
                    "0",
                    row("A", "nut", "", 1, "10", "yard"),
                    row("B", "nut", "", 1, "30", "yard")),
                of(
                    "far",
                    "0",
                    row("A", "nut", "", 1, "20", "yard"),
                    row("B", "nut", "", 1, "19", "yard"))));
    assertEquals(
        List.of("far", "far"), compared.split().stream().map(Compared.Taken::supplier).toList());
  }

  @Test
  void splicesComeWithTheBoardsThatNeedThem() {
    // Far's short boards cost less but need 50 of splices; near's need none of them.
    Compared compared =
        Comparing.compare(
            List.of(
                of(
                    "near",
                    "0",
                    row("A", "form board", "2x6", 1, "100", "A"),
                    row("A", "splice", "2x6", 0, "0", "A")),
                of(
                    "far",
                    "0",
                    row("A", "form board", "2x6", 1, "80", "A"),
                    row("A", "splice", "2x6", 0, "50", "A"))));
    assertEquals("best split 100.00 missing 0", totals(compared).get(2));
  }

  @Test
  void whatIsQuotedIsWhatTheEstimateChoosesBetween() {
    // The estimate's chooser over one list of both, and the split of both quotations, agree.
    Supplier near = Seller.named("near").delivery("20").supplier();
    Supplier far = Seller.named("far").delivery("4").supplier();
    Given.Row[] list = {
      price("nut", "1/2", "near", "each", "1.00"),
      price("nut", "1/2", "far", "each", "0.90"),
      price("plate washer", "1/2", "near", "each", "1.00"),
      price("plate washer", "1/2", "far", "each", "1.25")
    };
    Given job =
        job("A")
            .extra("nut", "1/2", 100, "each", ExtraKind.MATERIAL)
            .extra("plate washer", "1/2", 100, "each", ExtraKind.MATERIAL);
    Bought bought =
        Buyer.buy(
            List.of(job.takeOff()), Given.book(List.of(near, far), list), new FirstFitPlanner());
    Compared compared =
        Comparing.compare(
            List.of(
                of("near", "20", row("nut", "100"), row("plate washer", "100")),
                of("far", "4", row("nut", "90"), row("plate washer", "125"))));
    assertEquals(bought.totals().get(0).total(), compared.ways().get(2).total());
    assertEquals("214.00", compared.ways().get(2).total().toString());
  }

  @Test
  void aSecondStopIsTakenOnlyWhereItPaysWhatItCostsTheBuilder() {
    // The split would pay 80 + 100 + 3 = 183; a stop costs the builder 20 besides, which nobody is
    // paid.
    List<Quotation> quotations = new ArrayList<>();
    for (Quotation plain :
        List.of(
            of("near", "2", row("nut", "100"), row("bolt", "100")),
            of("far", "1", row("nut", "80"), row("bolt", "130")))) {
      quotations.add(
          new Quotation(
              plain.supplier(),
              Optional.empty(),
              "r",
              "USD",
              Map.of("A", Money.ofCents(2000)),
              plain.rows()));
    }
    Compared.Way split = Comparing.compare(quotations).ways().get(2);

    assertEquals("202.00", split.total().toString());
    assertEquals("222.00", split.weighed().toString());
    assertEquals(1, split.stops());
    assertEquals("exact: no split of the lines costs less, its stops counted", split.says());
  }
}
