package org.pourbook.takeoff;

import java.util.List;
import java.util.Optional;
import org.pourbook.job.Job;
import org.pourbook.job.Joint;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.measure.Length;
import org.pourbook.outline.Figures;

/** What to think of about the forms of a job. */
final class FormCautions {

  private FormCautions() {}

  /** Adds the cautions of a section's own forms. */
  static void of(Job job, Section section, List<FormSet> sets, Part part) {
    ofFall(job, section).ifPresent(part::add);
    if (sets.stream().anyMatch(set -> set.run().bend().isRound())) {
      part.add(
          new Caution(
              section.code(),
              "A curved form: its boards are counted by the length of the curve. Use thinner"
                  + " boards in layers, or boards kerfed on the inside, and set stakes closer.",
              "FORM-1"));
    }
    ofButts(section, sets).ifPresent(part::add);
    boolean thin =
        sets.stream().flatMap(set -> set.stack().boards().stream()).anyMatch(FormLumber::isThin);
    if (thin) {
      part.add(
          new Caution(
              section.code(),
              "Only boards thinner than 1-1/4 in are on offer: they span 24 in at most, so set"
                  + " stakes closer.",
              "FORM-2"));
    }
  }

  /** A butt of one course alone takes a stake of its own (FORM-4). */
  private static Optional<Caution> ofButts(Section section, List<FormSet> sets) {
    int stakes =
        sets.stream()
            .filter(set -> set.joined().isPresent())
            .mapToInt(set -> set.allSides() * set.butts() * (set.courses() - 1))
            .sum();
    return stakes == 0
        ? Optional.empty()
        : Optional.of(
            new Caution(
                section.code(),
                "Boards one above the other are butted at the same places, each with a stake"
                    + " there. Butts set apart are stiffer: turn every other course end for end,"
                    + " and have "
                    + stakes
                    + (stakes == 1 ? " stake more." : " stakes more."),
                "FORM-3"));
  }

  /** Returns a caution for a face that grows higher than its form where the top falls alone. */
  private static Optional<Caution> ofFall(Job job, Section section) {
    if (section.fall() == 0 || section.baseFollows()) {
      return Optional.empty();
    }
    Working working = new Working(job.units());
    Length rise = Length.ofMetres(section.fall() * Figures.of(section).extentXM());
    Length high = section.thickness().plus(rise);
    return Optional.of(high)
        .filter(face -> face.isMoreThan(section.formHeight()))
        .map(
            face ->
                new Caution(
                    section.code(),
                    "The base is level and the top falls: the face is "
                        + working.small(face)
                        + " at the high end, but the forms are "
                        + working.small(section.formHeight())
                        + " high. Write Form height, or bank the low boards.",
                    "FORM-1"));
  }

  /** Adds a caution for each joint that says a formed side is formed elsewhere, or not at all. */
  static void ofJoints(Job job, List<FormedSide> sides, Part part) {
    for (FormedSide side : sides) {
      side.joint(job, joint -> joint.drilled())
          .ifPresent(joint -> part.add(againstExisting(side, joint)));
      side.joint(job, FormedOnce::isCastIn)
          .flatMap(joint -> perhapsTheSame(side, sides))
          .ifPresent(part::add);
    }
  }

  private static Caution againstExisting(FormedSide side, Joint joint) {
    return new Caution(
        side.section().code(),
        "Side "
            + side.side().name()
            + " is formed, but joint "
            + joint.code()
            + " is drilled into existing concrete there: leave the side out of Formed sides if"
            + " nothing is formed.",
        "FORM-1");
  }

  /** Returns a caution for sides as long as each other that may be one, where X, Y do not say. */
  private static Optional<Caution> perhapsTheSame(FormedSide side, List<FormedSide> sides) {
    return sides.stream()
        .filter(other -> !other.section().code().equals(side.section().code()))
        .filter(other -> other.section().kind() == Kind.SLAB)
        .filter(other -> !(other.placed() && side.placed()))
        .filter(other -> other.side().length().equals(side.side().length()))
        .map(
            other ->
                new Caution(
                    side.section().code(),
                    "Side "
                        + side.side().name()
                        + " and side "
                        + other.side().name()
                        + " of "
                        + other.section().code()
                        + " are equally long, both are formed and a joint lies here: if they are"
                        + " the same line, leave one out of Formed sides or give X and Y.",
                    "FORM-1"))
        .findFirst();
  }
}
