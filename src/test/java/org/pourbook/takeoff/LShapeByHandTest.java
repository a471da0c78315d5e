package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.feet;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.pourbook.job.Sides;

/**
 * An L with an opening, worked by hand. 36 × 24 ft, the upper right 12 × 10 left out, an opening of
 * 3 × 3 ft at (12,10); 4 in thick; an edge all round, openings too, 16 in deep and 12 in wide at
 * the bottom, bank 1 to 1; #4 at 18 in each way, two #4 in the edge; cover 3 in.
 */
class LShapeByHandTest {

  /** Relative. */
  private static final double ROUNDING = 1e-7;

  private static final TakeOff L =
      TakeOffs.of(
          new SiteJob()
              .with(
                  slab("A")
                      .shape(
                          Plan.outline(
                              Plan.ring(0, 0, 36, 0, 36, 14, 24, 14, 24, 24, 0, 24),
                              Plan.box(12, 10, 3, 3)))
                      .edge("16", "12", Sides.ALL)
                      .bars("#4", "18")
                      .edgeBars(2, "#4"))
              .build(),
          Offer.NOTHING);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
      # 36 x 24 - 12 x 10 - 3 x 3
      plan area | 735
      trowel finish | 735
      # 735 x 4 / 12 / 27
      plan slab | 9.074074074
      # rings of width w: outer 120 w - (5 - 1) w2, opening 12 w + 4 w2: 132 w; w 2, 1-1/2, 1 ft:
      # 1/6 x (264 + 4 x 198 + 132) = 198 ft3
      turned-down edge | 7.333333333
      digging, turned-down edge, loose | 9.166666667
      # 245 ft3 - 132 x (2 + 1.6667)/2 x 1/3 = 164.333 ft3; x 1.10 x 1.35 ton/yd3
      compacted base | 6.086419753
      base, clean stone, loose | 9.038333333
      # rolls of 15 ft: Y 0 to 15 is 36 ft long, 14-1/2 to 24 is 24 ft
      vapor retarder, along Length | 900
      # down the bank 12 x sqrt(2) in place of 12 in: 132 x 0.414214 ft
      vapor retarder beyond the plan | 54.676190
      # the lap, Y 14-1/2 to 15, is as long as what lies under both
      seam tape | 24
      # 735 / 200
      curing compound | 3.675
      # Y from 3 in to 23'-9": 16 spaces; 10 lines under 14 ft, 2 of them at the opening; 7 above
      # 8 x 35.5 + 2 x (11.5 + 20.5) + 7 x 23.5
      bars along | 512.5
      # X: 24 spaces, 16 lines to 23'-9", 3 of them at the opening; 9 beyond
      # 13 x 23.5 + 3 x (9.5 + 10.5) + 9 x 13.5
      bars across | 487
      # stock of 20 ft, lap 29 in: one in each bar over 20 ft: (8 + 7 + 2), 13
      laps of bars along | 41.08333333
      laps of bars across | 31.41666667
      # 2 x (35.5 + 13.5 + 12 + 10 + 23.5 + 23.5 + 4 x 3.5)
      edge bars | 264
      laps of edge bars | 14.5
      # 10 corners x 2 x (2 x 29 - 1.2511) in
      corner bars | 94.58149
      # sum of the six x 0.668
      weight of #4 bars | 965.31443
      # Y: 7 rows, the fourth at the opening: 3 x 10 + (4 + 7) + 3 x 7
      bar supports | 62
      # 9 + 4 + 3 + 3 + 6 + 6 + 4 x 1
      edge blocks | 35
      # crossings 8 x 25 + 2 x 22 + 7 x 16 = 356, half; laps 36 x 2, corners 20 x 2 x 2; edge 2 x 35
      tie wire | 4.16
      formed sides | 132
      # outer 120 ft + 4 x 1-1/2 in, opening 12 ft - 4 x 1-1/2 in
      form boards 2x10, let into the grade by 1/2" | 132
      # at 2 ft: 19 + 8 + 7 + 6 + 13 + 13 + 4 x 3; butts at 16 ft: 2 + 1 + 1
      stakes, 34" long | 82
      # half of each, rounded up: 11 + 4 + 4 + 3 + 7 + 7 + 4 x 2
      braces, 42" long | 44
      splices 2x10 | 4
      # 2 x 82 x 2 boards + 4 x 44 + 8 x 8 splices; corners: 3 x 10 x 2 boards
      form screws | 568
      form screws at corners | 60
      # 132 x 16/12 / 400
      form release | 0.44
      # corners: 10 + 10 + 11 + 11 + 14; 12 x 24: 2 x 3, 24 + 24; 3 x 10 and 3 x 11: 6 each;
      # 9 x 24: 3, 18; 12 x 14: 2 x 2, 26
      control joints, 1" deep | 160
      panels | 19
      """)
  void everyQuantityIsTheOneWorkedByHand(String what, double amount) {
    List<Quantity> rows =
        L.quantities().stream().filter(quantity -> quantity.what().equals(what)).toList();
    assertEquals(1, rows.size(), what);
    assertEquals(amount, rows.get(0).amount(), amount * ROUNDING, rows.get(0).working());
  }

  @Test
  void theStripsShareTheConcreteByTheirAreas() {
    // 36 x 8; 24 x 8 + 12 x 6 - 9; 24 x 8: 288, 255, 192 ft2 of 735
    double all = (735 / 81.0 + 198 / 27.0) * 0.764554857984;

    List<Double> shares = L.strips().stream().map(strip -> strip.volumeM3() / all).toList();
    assertEquals(288 / 735.0, shares.get(0), ROUNDING);
    assertEquals(255 / 735.0, shares.get(1), ROUNDING);
    assertEquals(192 / 735.0, shares.get(2), ROUNDING);
    assertEquals(
        List.of(feet(36), feet(36), feet(24)), L.strips().stream().map(Strip::length).toList());
  }

  /** Two courses with 2 + 1 + 1 butts, as the stakes above have them: four stakes more. */
  @Test
  void itsCautionsAreThoseOfItsButtsAndOfTheOpeningsEdge() {
    List<String> told =
        L.cautions().stream().filter(c -> !c.section().isEmpty()).map(Caution::says).toList();
    assertEquals(
        List.of(
            "Boards one above the other are butted at the same places, each with a stake there."
                + " Butts set apart are stiffer: turn every other course end for end, and have 4"
                + " stakes more.",
            "All sides are turned down, the 4 of its openings too. If only the outside is meant,"
                + " write under Edge sides: 1, 2, 3, 4, 5, 6."),
        told);
  }

  /** The fixture's points have the same names in both rings, as the reader never lets them. */
  @Test
  void anEdgeOfNamedSidesOrAroundNoOpeningDrawsNone() {
    SiteJob named =
        new SiteJob()
            .with(
                slab("A")
                    .shape(
                        Plan.outline(Plan.ring(0, 0, 36, 0, 36, 24, 0, 24), Plan.box(12, 10, 3, 3)))
                    .edge("16", "12", Sides.of(List.of("1", "2"))));
    SiteJob whole = new SiteJob().with(slab("A").edge("16", "12", Sides.ALL));

    assertEquals(List.of(), CodeCautions.of(named.build()).cautions());
    assertEquals(List.of(), CodeCautions.of(whole.build()).cautions());
  }
}
