package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.feet;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Job;
import org.pourbook.job.JointSpacing;
import org.pourbook.job.Setting;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;

class JointTakeoffTest {

  private static final double ROUNDING = 1e-9;

  @Test
  void aFourInchFloorIsCutIntoTheFewestWellShapedPanels() {
    Part joints = JointTakeoff.of(new SiteJob().with(slab("A")).build());

    // 30 x 4 in = 10 ft: 36 / 10 up = 4 by 24 / 10 up = 3 panels of 9 x 8 ft:
    // 3 joints of 24 ft across, 2 of 36 ft along: 144 ft, 1 in deep
    assertEquals(144, row(joints, "control joints, 1\" deep").amount(), ROUNDING);
    assertEquals(
        "(3 × 24'-0\" + 2 × 36'-0\") = 144 ft", row(joints, "control joints, 1\" deep").working());
    assertEquals(5, joints.joints().size());
    assertEquals("9'-0\" along Length", joints.joints().get(0).note());
    assertEquals(Length.ofInches(1), joints.joints().get(0).depth().orElseThrow());
    assertEquals("saw cutting", joints.quantities().get(0).material().orElseThrow().material());
  }

  @Test
  void aWrittenSpacingIsTheLargestSide() {
    SiteJob job =
        new SiteJob().with(slab("A").joints(new JointSpacing(false, Optional.of(feet(12)))));

    // 3 by 2 panels of 12 ft: 2 x 24 + 1 x 36
    assertEquals(84, JointTakeoff.of(job.build()).quantities().get(0).amount(), ROUNDING);
  }

  @Test
  void noneMeansNone() {
    Job job = new SiteJob().with(slab("A").joints(JointSpacing.NONE)).build();

    assertTrue(JointTakeoff.of(job).quantities().isEmpty());
    assertTrue(JointTakeoff.of(job).joints().isEmpty());
  }

  @Test
  void aRoundFloorIsCutAlongChords() {
    Job job = new SiteJob().with(slab("A").shape(new Shape.Round(feet(20)))).build();

    // 2 by 2 panels: two diameters
    assertEquals(40, JointTakeoff.of(job).quantities().get(0).amount(), 1e-8); // to the nanometre
  }

  @Test
  void sealedJointsTakeSealantAndBackerRod() {
    Job job = new SiteJob().with(Setting.SEAL_JOINTS, "yes").with(slab("A")).build();
    Part joints = JointTakeoff.of(job);

    // 144 ft x 12 x 1/4 x 1/2 in / 231 in3 = 0.9351 gal
    assertEquals(144 * 12 * 0.125 / 231, row(joints, "joint sealant").amount(), ROUNDING);
    assertEquals(144, row(joints, "backer rod").amount(), ROUNDING);
  }

  @Test
  void countedFloorsAreAllCut() {
    Part joints = JointTakeoff.of(new SiteJob().with(slab("A").count(3)).build());

    assertEquals(3 * 144, joints.quantities().get(0).amount(), ROUNDING);
    assertEquals("9'-0\" along Length × 3", joints.joints().get(0).note());
  }

  @Test
  void anIsolationJointIsFilledByLengthAndDepth() {
    Part joints =
        JointTakeoff.of(
            new SiteJob()
                .with(slab("A").joints(JointSpacing.NONE))
                .with(UnderFloorTest.isolation("L1", feet(36)))
                .build());

    Quantity filler = joints.quantities().get(0);
    assertEquals(new MaterialKey("joint filler", "1/2 x 4"), filler.material().orElseThrow());
    assertEquals(36, filler.amount(), ROUNDING);
    assertEquals("I1", filler.section());
    assertEquals("isolation", joints.joints().get(0).what());
  }

  private static Quantity row(Part part, String what) {
    List<Quantity> rows =
        part.quantities().stream().filter(quantity -> quantity.what().equals(what)).toList();
    assertEquals(1, rows.size(), what);
    return rows.get(0);
  }
}
