package org.pourbook.takeoff;

import java.util.List;
import java.util.function.Function;
import org.pourbook.job.Job;

/** Works a job out by every family of rules. */
public final class TakeOffs {

  private TakeOffs() {}

  /** Returns everything that a job needs, before anything is bought. */
  public static TakeOff of(Job job, OnOffer onOffer) {
    List<Part> parts =
        List.of(
            ConcreteTakeoff.of(job),
            BaseTakeoff.of(job, onOffer),
            DiggingTakeoff.of(job),
            RetarderTakeoff.of(job, onOffer),
            FloorTakeoff.of(job, onOffer));
    return new TakeOff(
        job,
        all(parts, Part::quantities),
        all(parts, Part::pieces),
        all(parts, Part::concrete),
        all(parts, Part::boltPieces),
        all(parts, Part::barMarks),
        all(parts, Part::joints),
        all(parts, Part::cautions),
        all(parts, Part::ready),
        all(parts, Part::strips));
  }

  private static <T> List<T> all(List<Part> parts, Function<Part, List<T>> of) {
    return parts.stream().flatMap(part -> of.apply(part).stream()).toList();
  }
}
