package org.pourbook.cut;

import static org.pourbook.cut.CutJobs.feet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;

/** Invented jobs like real ones: lengths mostly on the inch, prices of no supplier. */
final class RandomJobs {

  /** Stock on offer, and whether pieces are long or short for it. */
  enum Family {
    ONE_LONG(192, 16),
    ONE_SHORT(192, 7),
    SIX_LONG(192, 16),
    SIX_SHORT(192, 7),
    BARS_LONG(192, 30),
    BARS_SHORT(192, 14);

    private final long shortest;
    private final long longest;

    Family(long shortest, long feet) {
      this.shortest = shortest;
      this.longest = feet(feet);
    }

    private CutJobs stock() {
      return switch (this) {
        case ONE_LONG, ONE_SHORT -> new CutJobs().stock(feet(16), 1438);
        case SIX_LONG, SIX_SHORT ->
            new CutJobs()
                .stock(feet(8), 648)
                .stock(feet(10), 827)
                .stock(feet(12), 998)
                .stock(feet(14), 1245)
                .stock(feet(16), 1438)
                .stock(feet(20), 2095);
        case BARS_LONG, BARS_SHORT -> new CutJobs().stock(feet(20), 1125).stock(feet(40), 2210);
      };
    }
  }

  private RandomJobs() {}

  static CutJob job(Family family, int lengths, int pieces, long seed) {
    SplittableRandom random = new SplittableRandom(seed * 1_000_003 + lengths * 31L + pieces);
    TreeSet<Long> distinct = new TreeSet<>();
    while (distinct.size() < lengths) {
      distinct.add(length(family, random));
    }
    int[] count = new int[lengths];
    Arrays.fill(count, 1);
    for (int i = lengths; i < pieces; i++) {
      count[random.nextInt(lengths)]++;
    }
    CutJobs job = family.stock().kerf(2);
    List<Long> order = new ArrayList<>(distinct);
    for (int i = 0; i < lengths; i++) {
      job.piece(order.get(i), count[i]);
    }
    return job.build();
  }

  private static long length(Family family, SplittableRandom random) {
    int grain = random.nextInt(100);
    long step = grain < 60 ? 16 : grain < 85 ? 8 : grain < 95 ? 4 : 1;
    long length = family.shortest + random.nextLong(family.longest - family.shortest + 1);
    return length / step * step;
  }
}
