package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.pourbook.measure.Unit;

class LoadPlansTest {

  private static LoadPlan plan(double allowedYd3, Seller seller) {
    return LoadPlans.cheaper(
        Unit.YD3.toBase(allowedYd3), Unit.YD3.toBase(0.25), Unit.YD3.toBase(10), seller.supplier());
  }

  private static List<Double> yd3(LoadPlan plan) {
    return plan.loadsM3().stream()
        .map(m3 -> Packs.exact(Unit.YD3.fromBase(m3)).doubleValue())
        .toList();
  }

  @Test
  void withoutFeesTrucksComeFullAndTheRestLast() {
    LoadPlan plan = plan(23.6, Seller.named("plant"));
    assertEquals(List.of(10.0, 10.0, 3.75), yd3(plan));
    assertEquals("0.00", plan.fees().toString());
  }

  @Test
  void aTwentyFiveBy27FootSlabSixInchesThickIsOrderedAtThirteenAndThreeQuarters() {
    // 25 x 27 x 0.5 / 27 = 12.5 yd3, and 10 % = 13.75 yd3: 55 steps, not 56.
    assertEquals(List.of(10.0, 3.75), yd3(plan(25 * 27 * 0.5 / 27 * 1.10, Seller.named("plant"))));
  }

  @Test
  void aFlatFeeOnShortLoadsIsAvoidedByBalancedLoads() {
    // 13.75 yd3 as 10 + 3.75: one load under 4 yd3. Balanced: 28 and 27 steps, 7 + 6.75 yd3.
    LoadPlan plan = plan(13.75, Seller.named("plant").shortFlat(4, "90"));
    assertEquals(List.of(7.0, 6.75), yd3(plan));
    assertEquals("0.00", plan.fees().toString());
  }

  @Test
  void balancedLoadsThatWouldAllBeShortAreNotTaken() {
    // 10.5 yd3: 10 + 0.5 pays one fee, 5.25 + 5.25 under 6 yd3 would pay two.
    LoadPlan plan = plan(10.5, Seller.named("plant").shortFlat(6, "90"));
    assertEquals(List.of(10.0, 0.5), yd3(plan));
    assertEquals("90.00", plan.shortFee().toString());
  }

  @Test
  void aFeeByTheYardIsForWhatIsMissing() {
    // 2.75 yd3 lacks 1.25 yd3 of 4 yd3, at 45 a yard: 56.25.
    LoadPlan plan = plan(2.75, Seller.named("plant").shortPerYd3(4, "45"));
    assertEquals("56.25", plan.shortFee().toString());
  }

  @Test
  void aFeeByTheOrderLooksAtTheOrderNotAtItsLastLoad() {
    LoadPlan large = plan(13.75, Seller.named("plant").shortFlat(4, "90").byOrder());
    assertEquals(List.of(10.0, 3.75), yd3(large));
    assertEquals("0.00", large.shortFee().toString());
    LoadPlan small = plan(3.75, Seller.named("plant").shortFlat(4, "90").byOrder());
    assertEquals("90.00", small.shortFee().toString());
  }

  @Test
  void aLoadOfExactlyTheLimitIsNotShort() {
    assertEquals("0.00", plan(4, Seller.named("plant").shortFlat(4, "90")).shortFee().toString());
  }

  @Test
  void eachLoadPaysItsFee() {
    assertEquals("36.00", plan(21, Seller.named("plant").perLoad("12")).loadFee().toString());
  }
}
