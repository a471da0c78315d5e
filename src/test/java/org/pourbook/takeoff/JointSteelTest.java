package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SteelTakeoffTest.amount;
import static org.pourbook.takeoff.SteelTakeoffTest.caution;
import static org.pourbook.takeoff.SteelTakeoffTest.key;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pourbook.job.Joint;
import org.pourbook.job.JointKind;
import org.pourbook.job.Kind;
import org.pourbook.measure.Length;
import org.pourbook.measure.UnitSystem;
import org.pourbook.takeoff.SteelFixture.SectionBuilder;

class JointSteelTest {

  private final SteelFixture job = new SteelFixture();

  private SectionBuilder slab(Length thickness) {
    return job.slab("F1", Length.ofFeet(24), Length.ofFeet(20), thickness);
  }

  @Test
  void dowelsOfASixInchSlabAreThoseOfThePavingTable() {
    slab(Length.ofInches(6));
    job.joint(SteelFixture.joint(JointKind.DOWEL, "F1", Length.ofFeet(24)));
    Part part = job.takeOff();
    assertEquals(24, amount(part, "dowels"));
    assertEquals(Material.DOWEL.of("3/4 x 16"), key(part, "dowels"));
    assertEquals(24, amount(part, "dowel sleeves"));
    assertEquals(Material.DOWEL_SLEEVE.of("3/4"), key(part, "dowel sleeves"));
    assertTrue(caution(part, "table for paving"));
    JointLine line = part.joints().get(0);
    assertEquals(24, line.bars());
    assertEquals("3/4 x 16 @ 12\"", line.barText());
    assertEquals("cast in", line.note());
    assertTrue(part.pieces().isEmpty());
  }

  @ParameterizedTest
  @CsvSource({
    "#6, 3/4 x 18",
    "1 in, 1 x 18",
    "'1-1/4\"', 1-1/4 x 18",
    "20 mm, 20 mm x 457.2",
    "M20, M20 x 457.2",
    "unreadable, 3/4 x 18"
  })
  void aWrittenDowelIsBoughtByItsDiameterAndLength(String bar, String size) {
    slab(Length.ofInches(6));
    Joint plain = SteelFixture.joint(JointKind.DOWEL, "F1", Length.ofFeet(24));
    job.joint(written(plain, bar, Length.ofInches(18), Length.ofInches(12), false));
    assertEquals(Material.DOWEL.of(size), key(job.takeOff(), "dowels"));
  }

  @Test
  void dowelsInAThinSlabAreCountedButTold() {
    slab(Length.ofInches(4));
    job.joint(SteelFixture.joint(JointKind.DOWEL, "F1", Length.ofFeet(24)));
    Part part = job.takeOff();
    assertEquals(24, amount(part, "dowels"));
    assertTrue(caution(part, "one this thin is tied"));
  }

  /** ⌈240/18⌉ = 14 bars of 18 in; 14 holes of 0.9940 in3 are 0.06024 gal of 231 in3. */
  @Test
  void drilledTiesOfAThinSlabAreCutFromStockAndBonded() {
    slab(Length.ofInches(4));
    Joint plain = SteelFixture.joint(JointKind.TIE, "F1", Length.ofFeet(20));
    job.joint(drilled(plain));
    Part part = job.takeOff();
    assertEquals(21, amount(part, "tie bars"), 1e-9);
    assertEquals(Map.of(Length.ofInches(18), 14), SteelTakeoffTest.pieces(part, "#4"));
    assertEquals(0.06024, amount(part, "anchoring adhesive"), 0.000005);
    assertEquals("drilled 6\" deep, hole 5/8\"", part.joints().get(0).note());
    assertTrue(part.quantities().stream().noneMatch(q -> q.what().equals("bar caps")));
    assertTrue(caution(part, "silica"));
    assertEquals(2, part.ready().size());
  }

  /**
   * By hand: 31'-6" of existing edge, a slab of 7": 3/4 x 16 @ 12, ⌈378/12⌉ = ⌈31.5⌉ = 32 dowels,
   * half of each, 8", in a hole of 7/8". Adhesive: π/4 × (49/64 − 36/64) × 8 × 1.5 × 32 = π/4 × 78
   * = 61.2611 in3, of 231 to the gallon. A bar bonded into existing concrete stands before the
   * pour, not after it: no cap.
   */
  @Test
  void drilledDowelsAreBondedForHalfTheirLength() {
    slab(Length.ofInches(7));
    job.joint(drilled(SteelFixture.joint(JointKind.DOWEL, "F1", Length.ofInches(378))));
    Part part = job.takeOff();
    assertEquals(32, amount(part, "dowels"));
    assertEquals(Material.DOWEL.of("3/4 x 16"), key(part, "dowels"));
    assertEquals(32, amount(part, "dowel sleeves"));
    assertEquals(Math.PI / 4 * 78 / 231, amount(part, "anchoring adhesive"), 1e-9);
    assertEquals("drilled 8\" deep, hole 7/8\"", part.joints().get(0).note());
    assertTrue(part.quantities().stream().noneMatch(q -> q.what().equals("bar caps")));
  }

  /**
   * By hand: ten diameters of a #7 are 8-3/4", more than 6"; ⌈100/24⌉ = 5 bars, half a space over.
   */
  @Test
  void aThickTieIsDrilledInTenDiameters() {
    slab(Length.ofInches(8));
    Joint plain = SteelFixture.joint(JointKind.TIE, "F1", Length.ofInches(100));
    job.joint(written(plain, "#7", Length.ofInches(30), Length.ofInches(24), true));
    Part part = job.takeOff();
    assertEquals(Map.of(Length.ofInches(30), 5), SteelTakeoffTest.pieces(part, "#7"));
    assertEquals("drilled 8-3/4\" deep, hole 1\"", part.joints().get(0).note());
    // π/4 × (1 − 49/64) × 8.75 × 1.5 × 5 in3
    double in3 = Math.PI / 4 * 15 / 64 * 8.75 * 1.5 * 5;
    assertEquals(in3 / 231, amount(part, "anchoring adhesive"), 1e-9);
  }

  /**
   * By hand: 3 piers of 4 uprights each leave 12 ends standing; a bulkhead of 10'-2" with ties at
   * 18" leaves ⌈122/18⌉ = 7; drilled ties of another joint none.
   */
  @Test
  void everyBarEndThatAPourLeavesStandingIsCapped() {
    slab(Length.ofInches(4));
    SectionBuilder pier = job.slab("P", Length.ofFeet(1), Length.ofFeet(1), Length.ofInches(36));
    pier.kind = Kind.PIER;
    pier.count = 3;
    pier.edgeBars = Optional.of(SteelFixture.run(4, "#4"));
    job.joint(SteelFixture.joint(JointKind.TIE, "F1", Length.ofInches(122)));
    job.joint(drilled(SteelFixture.joint(JointKind.TIE, "F1", Length.ofFeet(9))));
    double caps =
        job.takeOff().quantities().stream()
            .filter(q -> q.what().equals("bar caps"))
            .mapToDouble(Quantity::amount)
            .sum();
    assertEquals(12 + 7, caps);
  }

  @Test
  void tiesCastIntoAnEarlierPourAreCapped() {
    slab(Length.ofInches(4)).count = 2;
    job.joint(SteelFixture.joint(JointKind.TIE, "F1", Length.ofFeet(20)));
    Part part = job.takeOff();
    assertEquals(42, amount(part, "tie bars"), 1e-9);
    assertEquals(28, amount(part, "bar caps"));
  }

  @Test
  void aMetricJobsAdhesiveIsInLitres() {
    job.units = UnitSystem.M;
    slab(Length.ofMillimetres(100));
    Joint plain = SteelFixture.joint(JointKind.TIE, "F1", Length.ofMillimetres(6000));
    job.joint(written(plain, "12 mm", Length.ofMillimetres(450), Length.ofMillimetres(450), true));
    Part part = job.takeOff();
    // ⌈6000/450⌉ = 14 bars; holes 15.175 mm wide, 152.4 mm deep (6 in over 120 mm)
    assertEquals(14 * 0.45, amount(part, "tie bars"), 1e-9);
    double mm3 = Math.PI / 4 * (15.175 * 15.175 - 144) * 152.4 * 1.5 * 14;
    assertEquals(mm3 / 1e6, amount(part, "anchoring adhesive"), 1e-9);
  }

  @Test
  void barsThatDoNotReachOutOfTheirHolesAreTold() {
    slab(Length.ofInches(4));
    Joint plain = SteelFixture.joint(JointKind.TIE, "F1", Length.ofFeet(20));
    job.joint(written(plain, "#4", Length.ofInches(6), Length.ofInches(18), true));
    assertTrue(caution(job.takeOff(), "do not reach out of their holes"));
  }

  @Test
  void aJointWithoutASectionLiesOnTheFirstFloor() {
    job.slab("W", Length.ofFeet(24), Length.ofFeet(1), Length.ofInches(12)).kind = Kind.FOOTING;
    slab(Length.ofInches(8));
    job.joint(SteelFixture.joint(JointKind.DOWEL, "", Length.ofFeet(24)));
    assertEquals(Material.DOWEL.of("1 x 16"), key(job.takeOff(), "dowels"));
  }

  @Test
  void nothingCrossesAnIsolationJoint() {
    slab(Length.ofInches(4));
    job.joint(SteelFixture.joint(JointKind.ISOLATION, "F1", Length.ofFeet(20)));
    Part part = job.takeOff();
    assertTrue(part.joints().isEmpty());
    assertTrue(part.quantities().isEmpty());
  }

  private static Joint drilled(Joint plain) {
    return new Joint(
        plain.code(),
        plain.section(),
        plain.side(),
        plain.kind(),
        plain.length(),
        plain.bar(),
        plain.spacing(),
        plain.barLength(),
        true,
        plain.embedment(),
        plain.drop(),
        plain.fillerDepth(),
        plain.place());
  }

  private static Joint written(
      Joint plain, String bar, Length barLength, Length spacing, boolean drilled) {
    return new Joint(
        plain.code(),
        plain.section(),
        plain.side(),
        plain.kind(),
        plain.length(),
        Optional.of(bar),
        Optional.of(spacing),
        Optional.of(barLength),
        drilled,
        plain.embedment(),
        plain.drop(),
        plain.fillerDepth(),
        plain.place());
  }
}
