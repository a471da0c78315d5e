package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Position;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.outline.Figures;
import org.pourbook.outline.Placed;

/**
 * Tells slabs that cover the same ground (CON-1): a slip in X, Y or a size, since the concrete of
 * both is counted. Slabs whose places are not known are not looked at.
 */
final class OverlapCautions {

  private static final Position ORIGIN = new Position(Length.ZERO, Length.ZERO);

  private record Ground(Section section, Placed placed) {}

  private OverlapCautions() {}

  /** Adds what is told of a job's slabs: of each, the first one before it that it covers. */
  static void add(Part part, Job job) {
    Working working = new Working(job.units());
    List<Ground> before = new ArrayList<>();
    for (Section section : job.sections()) {
      if (section.kind() == Kind.SLAB && job.timesOf(section) == 1) {
        ground(section)
            .ifPresent(
                ground -> {
                  before.stream()
                      .filter(other -> ground.placed.commonM2(other.placed) > 0)
                      .findFirst()
                      .ifPresent(other -> part.add(caution(ground, other, working)));
                  before.add(ground);
                });
      }
    }
  }

  private static Optional<Ground> ground(Section section) {
    Optional<Position> at =
        section.shape() instanceof Shape.Outline ? Optional.of(ORIGIN) : section.position();
    return at.map(
        p -> new Ground(section, new Placed(Figures.of(section), p.x().metres(), p.y().metres())));
  }

  private static Caution caution(Ground ground, Ground other, Working working) {
    String says =
        ground.section.code()
            + " and "
            + other.section.code()
            + " cover the same "
            + working.area(ground.placed.commonM2(other.placed))
            + " of the plan, and both are counted. Unless one is poured on the other, look at X, Y and"
            + " the sizes.";
    return new Caution(ground.section.code(), says, "CON-1");
  }
}
