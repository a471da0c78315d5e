package org.pourbook.ticket;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pourbook.takeoff.MaterialKey;

/** A ticket's quantity in the unit in which the material is counted. */
class OwnQuantityTest {

  private static final MaterialKey WIRE = new MaterialKey("tie wire", "16 ga");

  /** Returns 6 of a unit in the own unit, where one order unit holds some. */
  private static Optional<Double> six(String unit, String own, String orderUnit, double holds) {
    Ordered.Item item =
        new Ordered.Item(
            Desk.PLANT, "", orderUnit, holds, BigDecimal.TEN, Optional.empty(), Optional.empty());
    Ordered ordered = new Ordered("A", "A", WIRE, own, 1, List.of(item));
    return OwnQuantity.of(Desk.goods("T1", "A", WIRE, 6, unit), ordered, item);
  }

  private static void assertSix(double expected, Optional<Double> own) {
    assertEquals(expected, own.orElseThrow(), 1e-12 * expected);
  }

  @Test
  void orderUnitsHoldAPackAndNoUnitMeansThem() {
    assertSix(150, six("box", "each", "box", 25));
    assertSix(150, six(" Box ", "each", "box", 25));
    assertSix(150, six("", "each", "box", 25));
  }

  @Test
  void ownUnitsAreCountedAsTheyAre() {
    assertSix(6, six("Each", "each", "box", 25));
  }

  /** 1 yd3 = 0.764554857984 m3, 1 lb = 0.45359237 kg, exactly. */
  @Test
  void anotherMeasureOfTheSameKindIsConverted() {
    assertSix(6 * 0.764554857984, six("yd3", "m3", "load", 7));
    assertSix(6 / 0.764554857984, six("m3", "yd3", "yd3", 1));
    assertSix(6 * 0.45359237, six("lb", "kg", "roll", 1.5));
  }

  /** What is counted by the piece and sold by weight may be billed in another unit of weight. */
  @Test
  void aMeasureOfTheOrderUnitsKindGoesByThePack() {
    assertSix(6 / 0.45359237 * 40, six("kg", "each", "lb", 40));
  }

  @Test
  void whatIsMeasuredOtherwiseIsAskedAbout() {
    assertEquals(Optional.empty(), six("bucket", "m3", "yd3", 1));
    assertEquals(Optional.empty(), six("lb", "m3", "yd3", 1));
    assertEquals(Optional.empty(), six("lb", "each", "box", 25));
    assertEquals(Optional.empty(), six("bucket", "each", "box", 25));
  }
}
