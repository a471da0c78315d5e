package org.pourbook.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class OptimalPlannerTest {

  static List<Instance> instances() {
    return Instance.all();
  }

  @ParameterizedTest
  @MethodSource("instances")
  void everyInstanceIsPlannedAtItsOptimum(Instance instance) {
    CutResult.Planned plan = planned(instance.job());
    assertEquals(instance.optimumMicros(), plan.costMicros());
    assertTrue(plan.boundMicros() <= instance.optimumMicros());
  }

  private static CutResult.Planned planned(CutJob job) {
    return assertInstanceOf(CutResult.Planned.class, OptimalPlanner.usual().plan(job));
  }
}
