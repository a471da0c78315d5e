package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SteelTakeoffTest.amount;
import static org.pourbook.takeoff.SteelTakeoffTest.caution;
import static org.pourbook.takeoff.SteelTakeoffTest.find;
import static org.pourbook.takeoff.SteelTakeoffTest.key;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.OnOffer.SheetSize;
import org.pourbook.takeoff.SteelFixture.SectionBuilder;

class MeshSteelTest {

  private static final String STYLE = "6x6-W1.4xW1.4";

  private final SteelFixture job = new SteelFixture();

  private SectionBuilder slab(Length length, Length width) {
    SectionBuilder slab = job.slab("F1", length, width, Length.ofInches(4));
    slab.mesh = Optional.of(STYLE);
    return slab;
  }

  private void offer(long lengthFt, long widthFt) {
    job.sheets.put(STYLE, List.of(new SheetSize(Length.ofFeet(lengthFt), Length.ofFeet(widthFt))));
  }

  /**
   * By hand, mat 23'-8" × 15'-8", sheets 5' × 10' lapped 6 + 2 = 8". Along: ⌈180/52⌉ = 4 strips of
   * ⌈276/112⌉ = 3 sheets, the last 60" long, two of them from one sheet: 4 × 2 + 2 = 10 sheets.
   * Across: 6 strips of 2 sheets, 12. So along: 4 × (284 + 16)" × 5' = 500 ft2.
   */
  @Test
  void sheetsAreLaidInTheDirectionThatTakesFewest() {
    slab(Length.ofFeet(24), Length.ofFeet(16));
    offer(10, 5);
    Part part = job.takeOff();
    assertEquals(500, amount(part, "mesh"), 1e-9);
    assertEquals(Material.MESH.of(STYLE), key(part, "mesh"));
    assertEquals(
        "4 strips along, 100 ft with 8 end laps of 8\" × 5'-0\" = 500 ft2",
        find(part, "mesh").working());
    assertTrue(part.quantities().stream().noneMatch(q -> q.what().equals("mesh cut away")));
  }

  /**
   * By hand: slab 26'-4" × 13'-4", mat 312" × 156", wires 4" apart lap 4 + 2 = 6", sheets 8' × 20'.
   * Along: ⌈150/90⌉ = 2 strips of ⌈306/234⌉ = 2 sheets, the last 312 − 234 = 78" long, both from
   * one sheet: 2 + 1 = 3 sheets, 480 ft2. Across: ⌈306/90⌉ = 4 strips of one piece of 156", no two
   * from one sheet of 240": 640 ft2. So along: 2 × (312 + 6)" × 8' = 424 ft2, 56 ft2 cut away.
   * Supports 3' apart: (⌈312/36⌉ + 1) × (⌈156/36⌉ + 1) = 10 × 6.
   */
  @Test
  void closerWiresLapLessAndOneSheetEndsTwoStrips() {
    String style = "4x4-W2.9xW2.9";
    slab(Length.ofInches(316), Length.ofInches(160)).mesh = Optional.of(style);
    job.sheets.put(style, List.of(new SheetSize(Length.ofFeet(20), Length.ofFeet(8))));
    Part part = job.takeOff();
    assertEquals(424, amount(part, "mesh"), 1e-9);
    assertEquals(56, amount(part, "mesh cut away"), 1e-9);
    assertEquals(60, amount(part, "bar supports"));
  }

  @Test
  void whatIsCutAwayMakesUpWholeSheets() {
    // Mat 17'-8" × 4'-8": one strip of 2 sheets, 212 + 8 in of 240.
    slab(Length.ofFeet(18), Length.ofFeet(5)).count = 2;
    offer(10, 5);
    Part part = job.takeOff();
    assertEquals(2 * 220 / 12.0 * 5, amount(part, "mesh"), 1e-9);
    assertEquals(2 * 20 / 12.0 * 5, amount(part, "mesh cut away"), 1e-9);
    assertEquals(
        "(2 sheets of 5'-0\" × 10'-0\" − 91.67 ft2) × 2 = 16.67 ft2",
        find(part, "mesh cut away").working());
  }

  @Test
  void stripsOffARollHaveNoEndLapsAndNothingIsCutAway() {
    slab(Length.ofFeet(24), Length.ofFeet(16));
    offer(150, 5);
    Part part = job.takeOff();
    // Along 4 × 284 in, across 6 × 188 in, which is less.
    assertEquals(6 * 188 / 12.0 * 5, amount(part, "mesh"), 1e-9);
    assertTrue(part.quantities().stream().noneMatch(q -> q.what().equals("mesh cut away")));
  }

  /** 284/36 up + 1 = 9 by 188/36 up + 1 = 7; 4 − 1.5 − 2 × 0.1335 = 2.233 in, down to 2 in. */
  @Test
  void meshRestsOnSupportsThreeFeetApart() {
    slab(Length.ofFeet(24), Length.ofFeet(16));
    Part part = job.takeOff();
    assertEquals(63, amount(part, "bar supports"));
    assertEquals(Material.BAR_SUPPORT.of("2 in"), key(part, "bar supports"));
  }

  @Test
  void meshBesideBarsRestsOnThem() {
    slab(Length.ofFeet(24), Length.ofFeet(16)).bars("#4", Length.ofInches(16));
    long supports =
        job.takeOff().quantities().stream().filter(q -> q.rule().equals("BAR-7")).count();
    assertEquals(1, supports);
  }

  @Test
  void stripsOfARoundSlabAreAsLongAsTheCircleUnderThem() {
    SectionBuilder slab = slab(Length.ofFeet(1), Length.ofFeet(1));
    slab.shape = new Shape.Round(Length.ofInches(124));
    offer(150, 5);
    double feet2 = amount(job.takeOff(), "mesh");
    // 120 in wide under 3 strips 52 in on: at most 3 × 10' × 5', at least the circle itself
    assertTrue(feet2 < 150, () -> feet2 + " ft2");
    assertTrue(feet2 > Math.PI * 25, () -> feet2 + " ft2");
  }

  @Test
  void metricStylesAreReadInMillimetres() {
    MeshStyle style = MeshStyle.named("152x152-MW9.1xMW9.1").orElseThrow();
    assertEquals(Length.ofMillimetres(152), style.acrossSpace());
    // 2 × √(4 × 9.1/π) mm
    assertEquals(2 * Math.sqrt(4 * 9.1 / Math.PI), style.wires().millimetres(), 1e-6);
  }

  @Test
  void aStyleThatCannotBeReadIsToldAndLaidAsTheUsualOne() {
    slab(Length.ofFeet(24), Length.ofFeet(16)).mesh = Optional.of("heavy");
    Part part = job.takeOff();
    assertTrue(caution(part, "cannot be read"));
    assertEquals(500, amount(part, "mesh"), 1e-9);
  }
}
