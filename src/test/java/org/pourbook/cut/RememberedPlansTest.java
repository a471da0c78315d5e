package org.pourbook.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.pourbook.measure.Length;

class RememberedPlansTest {

  private final List<CutJob> asked = new ArrayList<>();

  private CutResult plan(CutJob job) {
    asked.add(job);
    return new FirstFitPlanner().plan(job);
  }

  /**
   * Returns a job of one piece and one stock length: with its one cut in one pattern, four parts.
   */
  private static CutJob job(int feet, String goesTo) {
    return new CutJob(
        List.of(new CutJob.Piece(Length.ofFeet(feet), 1, goesTo)),
        List.of(new CutJob.Stock("0", Length.ofFeet(20), 7_000_000, Integer.MAX_VALUE)),
        Length.ZERO,
        Length.ofInches(1, 16));
  }

  @Test
  void aJobIsPlannedOnceAndTheSamePiecesForAnotherPlaceAreAnotherJob() {
    RememberedPlans plans = new RememberedPlans(this::plan, 1000);

    CutResult first = plans.plan(job(9, "0"));
    CutResult again = plans.plan(job(9, "0"));
    CutResult elsewhere = plans.plan(job(9, "1"));

    assertSame(first, again);
    assertEquals(new FirstFitPlanner().plan(job(9, "0")), again);
    assertEquals(new FirstFitPlanner().plan(job(9, "1")), elsewhere);
    assertEquals(List.of(job(9, "0"), job(9, "1")), asked);
  }

  @Test
  void whatWasAskedLongestAgoIsForgottenFirst() {
    RememberedPlans plans = new RememberedPlans(this::plan, 10); // two jobs

    plans.plan(job(9, "0"));
    plans.plan(job(8, "0"));
    plans.plan(job(9, "0"));
    plans.plan(job(7, "0"));
    plans.plan(job(9, "0"));
    plans.plan(job(8, "0"));

    assertEquals(List.of(job(9, "0"), job(8, "0"), job(7, "0"), job(8, "0")), asked);
  }

  @Test
  void whatIsTooLargeToBeRememberedIsPlannedAllTheSame() {
    RememberedPlans plans = new RememberedPlans(this::plan, 3);

    plans.plan(job(9, "0"));

    assertEquals(new FirstFitPlanner().plan(job(9, "0")), plans.plan(job(9, "0")));
    assertEquals(2, asked.size());
  }

  @Test
  void threadsGetWhatOneGets() {
    RememberedPlans plans = RememberedPlans.of(new FirstFitPlanner());

    List<CutResult> results =
        IntStream.range(0, 400).parallel().mapToObj(i -> plans.plan(job(1 + i % 20, "0"))).toList();

    for (int i = 0; i < results.size(); i++) {
      assertEquals(new FirstFitPlanner().plan(job(1 + i % 20, "0")), results.get(i));
    }
  }
}
