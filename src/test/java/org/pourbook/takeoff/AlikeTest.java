package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;

import org.junit.jupiter.api.Test;
import org.pourbook.job.Job;
import org.pourbook.job.Placing;

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
}
