package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.pourbook.job.Job;
import org.pourbook.job.Section;

/** Works a job out by every family of rules. */
public final class TakeOffs {

  private TakeOffs() {}

  /** Returns everything that a job needs, before anything is bought. */
  public static TakeOff of(Job job, OnOffer onOffer) {
    List<Part> parts =
        new ArrayList<>(
            List.of(
                ChangeCautions.of(job),
                ConcreteTakeoff.of(job),
                BaseTakeoff.of(job, onOffer),
                DiggingTakeoff.of(job),
                RetarderTakeoff.of(job, onOffer),
                FloorTakeoff.of(job, onOffer),
                SteelTakeoff.of(job, onOffer),
                FormTakeoff.of(job, onOffer),
                BoltTakeoff.of(job, onOffer),
                JointTakeoff.of(job),
                PourTakeoff.of(job, onOffer),
                ExtrasTakeoff.of(job),
                CodeCautions.of(job),
                WeatherCautions.of(job)));
    List<Quantity> quantities = inJobOrder(job, all(parts, Part::quantities));
    parts.add(SafetyCautions.of(job, quantities));
    parts.add(ReadyList.of(job, quantities));
    return new TakeOff(
        job,
        quantities,
        all(parts, Part::pieces),
        all(parts, Part::pegs),
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

  /** Section by section as the builder wrote them; then plates and joints; last the whole job. */
  private static List<Quantity> inJobOrder(Job job, List<Quantity> quantities) {
    List<String> codes = job.sections().stream().map(Section::code).toList();
    return quantities.stream()
        .sorted(Comparator.comparingInt(quantity -> place(codes, quantity.section())))
        .toList();
  }

  private static int place(List<String> codes, String code) {
    int index = codes.indexOf(code);
    if (index >= 0) {
      return index;
    }
    return code.isEmpty() ? Integer.MAX_VALUE : codes.size();
  }
}
