package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.pourbook.buy.Given.price;

import org.junit.jupiter.api.Test;
import org.pourbook.measure.Length;
import org.pourbook.measure.UnitSystem;
import org.pourbook.takeoff.Material;

class OrderUnitsTest {

  /** Doubles of exact factors, multiplied and divided a few times. */
  private static final double ROUNDING = 1e-12;

  private static double held(Material material, String size, UnitSystem units, Given.Row row) {
    OwnUnit own = OwnUnit.of(material, units);
    return own.fromBase(OrderUnits.held(row.price(), material.of(size), own));
  }

  private static double inFeetJob(Material material, String size, Given.Row row) {
    return held(material, size, UnitSystem.FT_IN, row);
  }

  private static double inMetricJob(Material material, String size, Given.Row row) {
    return held(material, size, UnitSystem.M, row);
  }

  @Test
  void aYardOfConcreteIsTheExactPartOfACubicMetre() {
    // Exact conversions: 1 yd3 = 0.764554857984 m3.
    assertEquals(
        0.764554857984,
        inMetricJob(Material.CONCRETE, "25 MPa", price("concrete", "25 MPa", "P", "yd3", "1")),
        ROUNDING);
  }

  @Test
  void liquidsConvertByTheGallonOf231CubicInches() {
    // 1 gal = 3.785411784 L by definition.
    assertEquals(
        3.785411784,
        inMetricJob(Material.CURING_COMPOUND, "", price("curing compound", "", "P", "gal", "1")),
        ROUNDING);
  }

  @Test
  void aTonIsTwoThousandPounds() {
    // 1 short ton = 907.18474 kg.
    assertEquals(
        0.90718474,
        inMetricJob(Material.BASE_GRAVEL, "sand", price("base gravel", "sand", "P", "ton", "1")),
        ROUNDING);
    assertEquals(
        100, inFeetJob(Material.TIE_WIRE, "", price("tie wire", "", "P", "cwt", "1")), ROUNDING);
  }

  @Test
  void barsByWeightConvertByTheTabulatedWeightAFoot() {
    // CRSI Manual of Standard Practice, 27th ed.: #4 weighs 0.668 lb/ft, #5 1.043 lb/ft.
    assertEquals(
        1 / 0.668, inFeetJob(Material.BAR, "#4", price("bar", "", "P", "lb", "1")), ROUNDING);
    assertEquals(
        100 / 1.043, inFeetJob(Material.BAR, "#5", price("bar", "#5", "P", "cwt", "1")), 1e-10);
    assertEquals(
        2000 / 0.668, inFeetJob(Material.BAR, "#4", price("bar", "#4", "P", "ton", "1")), 1e-9);
  }

  @Test
  void boardsByTheThousandBoardFeetConvertByNominalSize() {
    // EN5155 p. 1-28: 4 pieces of 1 x 8, 14 ft, are 37 1/3 board feet (T x W x L / 12).
    double feetInOneThousand =
        inFeetJob(Material.FORM_BOARD, "1x8", price("form board", "1x8", "P", "mbf", "1"));
    assertEquals(37 + 1 / 3.0, 4 * 14 / feetInOneThousand * 1000, 1e-9);
    assertEquals(
        1000,
        inFeetJob(Material.FORM_BOARD, "2x6", price("form board", "", "P", "MBF", "1")),
        1e-9);
  }

  @Test
  void baseByTheYardConvertsByItsLooseWeight() {
    // TM 9-2320-366-10-1 Table 2-15: gravel 2,970 lb/yd3, crushed limestone 2,700 lb/yd3.
    assertEquals(
        1.485,
        inFeetJob(
            Material.BASE_GRAVEL,
            "crusher run",
            price("base gravel", "crusher run", "P", "yd3", "1")),
        ROUNDING);
    assertEquals(
        1.35,
        inFeetJob(
            Material.BASE_GRAVEL,
            "clean stone",
            price("base gravel", "clean stone", "P", "yd3", "1")),
        ROUNDING);
  }

  @Test
  void aPackHoldsPiecesOwnUnitsOrWholeSheets() {
    assertEquals(
        25,
        inFeetJob(
            Material.ANCHOR_BOLT,
            "1/2 x 10",
            price("anchor bolt", "1/2 x 10", "P", "box", "1").pack("25")),
        0);
    assertEquals(
        180,
        inFeetJob(Material.SEAM_TAPE, "", price("seam tape", "", "P", "roll", "1").pack("180")),
        1e-10);
    assertEquals(
        320,
        inFeetJob(
            Material.FORM_BOARD,
            "2x6",
            price("form board", "2x6", "P", "bundle", "1").pack("20").stock(Length.ofFeet(16))),
        1e-10);
  }

  @Test
  void aRollWithoutPackHoldsOneOwnUnit() {
    assertEquals(
        1, inFeetJob(Material.SEAM_TAPE, "", price("seam tape", "", "P", "roll", "1")), ROUNDING);
  }

  @Test
  void aBagOfDryMixYieldsByItsWeight() {
    // 80 lb gives 0.60 ft3, 60 lb 0.45 ft3: 45 and 60 bags a cubic yard (retail pages).
    assertEquals(
        45,
        1
            / inFeetJob(
                Material.BAGGED_CONCRETE,
                "80 lb",
                price("bagged concrete", "80 lb", "P", "bag", "1")),
        1e-10);
    assertEquals(
        60,
        1
            / inFeetJob(
                Material.BAGGED_CONCRETE,
                "60 lb",
                price("bagged concrete", "60 lb", "P", "bag", "1")),
        1e-10);
  }
}
