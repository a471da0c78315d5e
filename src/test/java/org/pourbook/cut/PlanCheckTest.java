package org.pourbook.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.cut.CutJobs.feet;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.pourbook.cut.CutResult.Cut;
import org.pourbook.cut.CutResult.Division;
import org.pourbook.cut.CutResult.Pattern;
import org.pourbook.cut.CutResult.Planned;
import org.pourbook.measure.Length;

class PlanCheckTest {
  private final CutJob job =
      new CutJobs().kerf(2).stock(feet(8), 600, 2).piece(800, 2, "A").piece(400, 1, "B").build();
  private final Cut a = new Cut(CutJobs.STEP.times(800), 1, "A");
  private final Cut b = new Cut(CutJobs.STEP.times(400), 1, "B");
  private final Pattern both = pattern(1, List.of(a, b), 332);
  private final Pattern one = pattern(1, List.of(a), 734);
  private final Planned good = new Planned(List.of(both, one), 12_000_000, 6_000_000);

  @Test
  void aSoundPlanComesBack() {
    assertEquals(good, PlanCheck.check(job, good));
  }

  @Test
  void aMissingPieceIsADefect() {
    refused("pieces", p -> new Planned(List.of(both), 6_000_000, 0));
  }

  @Test
  void aPieceForAnotherPlaceIsADefect() {
    Pattern other = pattern(1, List.of(new Cut(a.length(), 1, "B")), 734);
    refused("pieces", p -> new Planned(List.of(both, other), 12_000_000, 0));
  }

  @Test
  void cutsOverTheStockAreADefect() {
    CutJob tight = new CutJobs().kerf(2).stock(1600, 600).piece(800, 2, "A").build();
    Pattern over =
        new Pattern(tight.stock().get(0), 1, List.of(new Cut(a.length(), 2, "A")), Length.ZERO);
    IllegalStateException defect =
        assertThrows(
            IllegalStateException.class,
            () -> PlanCheck.check(tight, new Planned(List.of(over), 6_000_000, 0)));
    assertTrue(String.valueOf(defect.getMessage()).contains("over their stock"), defect::toString);
  }

  @Test
  void moreStockThanThereIsIsADefect() {
    Pattern third = pattern(1, List.of(b), 1134);
    refused("limit", p -> new Planned(List.of(one, one, third), 18_000_000, 0));
  }

  @Test
  void aWrongCostIsADefect() {
    refused("cost", p -> new Planned(p.patterns(), 11_999_999, 0));
  }

  @Test
  void aBoundAboveTheCostIsADefect() {
    refused("bound", p -> new Planned(p.patterns(), p.costMicros(), p.costMicros() + 1));
  }

  @Test
  void aWrongOffcutIsADefect() {
    refused("offcut", p -> new Planned(List.of(both, pattern(1, List.of(a), 735)), 12_000_000, 0));
  }

  @Test
  void cutsNotLongestFirstAreADefect() {
    refused(
        "longest", p -> new Planned(List.of(pattern(1, List.of(b, a), 332), one), 12_000_000, 0));
  }

  @Test
  void stockNotOnOfferIsADefect() {
    CutJob.Stock other = new CutJob.Stock("other", Length.ofFeet(8), 6_000_000, 2);
    Pattern foreign = new Pattern(other, 1, one.cuts(), one.offcut());
    refused("offer", p -> new Planned(List.of(both, foreign), 12_000_000, 0));
  }

  @Test
  void whatIsMadeNoTimesIsADefect() {
    Pattern never = pattern(0, List.of(a), 734);
    refused("cuts nothing", p -> new Planned(List.of(both, one, never), 12_000_000, 0));
    Pattern empty = pattern(1, List.of(new Cut(a.length(), 0, "A")), 1536);
    refused("no pieces", p -> new Planned(List.of(both, one, empty), 18_000_000, 0));
    Planned plan = divided(500, 500);
    Division again = new Division(runs.runs().get(0), plan.divisions().get(0).pieces(), 0);
    refusedRun(
        "not asked for",
        new Planned(plan.patterns(), 6_000_000, 0, List.of(plan.divisions().get(0), again), 0));
  }

  @Test
  void aSoundDivisionComesBack() {
    Planned plan = divided(500, 500);
    assertEquals(plan, PlanCheck.check(runs, plan));
  }

  @Test
  void aRunOfAnotherLengthIsADefect() {
    refusedRun("not as long", divided(500, 490));
  }

  @Test
  void aPieceUnderTheShortestIsADefect() {
    refusedRun("too short", divided(755, 245));
  }

  @Test
  void aPieceOverTheLongestIsADefect() {
    refusedRun("too long", divided(770, 230));
  }

  @Test
  void moreJointsThanARunHasAreADefect() {
    refusedRun("other joints", divided(400, 300, 300));
  }

  @Test
  void aRunThatIsNotMadeIsADefect() {
    refusedRun("not made", new Planned(divided(500, 500).patterns(), 6_000_000, 0));
  }

  @Test
  void piecesOtherThanThoseOfTheDivisionAreADefect() {
    Planned other = divided(600, 400);
    Planned plan = new Planned(divided(500, 500).patterns(), 6_000_000, 0, other.divisions(), 0);
    refusedRun("pieces cut", plan);
  }

  @Test
  void aBoundForJointsAnywhereAboveTheBoundIsADefect() {
    Planned plan = divided(500, 500);
    refusedRun(
        "anywhere",
        new Planned(plan.patterns(), 6_000_000, 5_000_000, plan.divisions(), 5_500_000));
  }

  /** 980 in two pieces that lap by 20, none under 250 or over 760. */
  private final CutJob runs =
      new CutJobs().stock(feet(8), 600).run(980, 1, 20, 250, 760, 1, 1, "run0").build();

  private Planned divided(long... pieces) {
    List<Length> lengths = LongStream.of(pieces).mapToObj(CutJobs.STEP::times).toList();
    List<Cut> cuts = lengths.stream().map(piece -> new Cut(piece, 1, "run0")).toList();
    Length rest = Length.ofFeet(8).minus(lengths.stream().reduce(Length.ZERO, Length::plus));
    Pattern pattern = new Pattern(runs.stock().get(0), 1, cuts, rest);
    Division division = new Division(runs.runs().get(0), lengths, 1);
    return new Planned(List.of(pattern), 6_000_000, 0, List.of(division), 0);
  }

  private void refusedRun(String word, Planned plan) {
    IllegalStateException defect =
        assertThrows(IllegalStateException.class, () -> PlanCheck.check(runs, plan));
    assertTrue(String.valueOf(defect.getMessage()).contains(word), defect::toString);
  }

  private void refused(String word, UnaryOperator<Planned> change) {
    IllegalStateException defect =
        assertThrows(IllegalStateException.class, () -> PlanCheck.check(job, change.apply(good)));
    assertTrue(String.valueOf(defect.getMessage()).contains(word), defect::toString);
  }

  private Pattern pattern(int times, List<Cut> cuts, long offcut) {
    return new Pattern(job.stock().get(0), times, cuts, CutJobs.STEP.times(offcut));
  }
}
