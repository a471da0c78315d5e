package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;

import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Job;
import org.pourbook.job.Placing;
import org.pourbook.measure.Length;

class AlikeTest {

  @Test
  void takeOffsStayEqualAndShareTheirTextsAndKeys() {
    Job job = new SiteJob().with(SiteJob.pour(1, Placing.PUMP)).with(slab("A")).build();
    TakeOff one = TakeOffs.of(job, Offer.NOTHING);
    TakeOff other = TakeOffs.of(job, Offer.NOTHING);
    Alike alike = new Alike();

    TakeOff sharing = alike.of(one);
    TakeOff sharingToo = alike.of(other);

    assertEquals(one, sharing);
    assertEquals(other, sharingToo);
    for (int i = 0; i < one.quantities().size(); i++) {
      Quantity first = sharing.quantities().get(i);
      Quantity second = sharingToo.quantities().get(i);
      assertSame(first.working(), second.working());
      assertSame(first.material(), second.material());
    }
    assertNotSame(one.quantities().get(0).working(), other.quantities().get(0).working());
  }

  @Test
  void figuresOfOneTakeOffAreShared() {
    Job job =
        new SiteJob()
            .with(SiteJob.pour(1, Placing.PUMP))
            .with(slab("A").bars("#4", "16"))
            .with(slab("B").bars("#4", "16"))
            .build();

    TakeOff sharing = new Alike().of(TakeOffs.of(job, Offer.NOTHING));

    Set<Object> same = Collections.newSetFromMap(new IdentityHashMap<>());
    sharing
        .quantities()
        .forEach(quantity -> quantity.worked().ifPresent(worked -> gather(worked, same)));
    sharing.pieces().forEach(piece -> same.add(piece.length()));
    assertEquals(new HashSet<>(same).size(), same.size());
    assertTrue(same.stream().anyMatch(Worked.Given.class::isInstance));
    assertTrue(same.stream().anyMatch(Length.class::isInstance));
  }

  private static void gather(Worked worked, Set<Object> same) {
    same.add(worked);
    if (worked instanceof Worked.Sum sum) {
      sum.parts().forEach(part -> gather(part, same));
    }
    if (worked instanceof Worked.Product product) {
      product.factors().forEach(factor -> gather(factor, same));
    }
  }
}
