package org.pourbook.cut;

import java.util.Optional;
import java.util.OptionalLong;

/**
 * Plans by {@link FirstFit}; quick and never far off, seldom proven. Its bound is the one by length
 * alone.
 */
public final class FirstFitPlanner implements CutPlanner {

  @Override
  public CutResult plan(CutJob job) {
    return Planning.plan(
        job,
        model -> {
          OptionalLong bound = CoverBound.byLength(model);
          if (bound.isEmpty()) {
            return Planning.Found.certainlyNone();
          }
          Optional<Packing> packing = FirstFit.pack(model);
          return new Planning.Found(packing, bound);
        },
        Optional.empty());
  }
}
