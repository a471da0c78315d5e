package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.job.Job;
import org.pourbook.job.Joint;
import org.pourbook.job.JointKind;
import org.pourbook.job.Pour;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.takeoff.FormedSide.Span;

/**
 * Where sides of two sections lie on one line, so that one form serves both: the earlier pour's, or
 * within a pour the higher one (FORM-1).
 */
final class FormedOnce {

  private final Job job;
  private final Map<FormedSide, List<Span>> formedElsewhere = new HashMap<>();

  private FormedOnce(Job job) {
    this.job = job;
  }

  /** Returns the shared sides of a job, and tells of each in a caution. */
  static FormedOnce of(Job job, List<FormedSide> sides, Part part) {
    FormedOnce shared = new FormedOnce(job);
    List<FormedSide> firstPouredFirst =
        sides.stream().filter(FormedSide::placed).sorted(precedence(job)).toList();
    for (int i = 0; i < firstPouredFirst.size(); i++) {
      for (int j = 0; j < i; j++) {
        shared.compare(firstPouredFirst.get(j), firstPouredFirst.get(i), part);
      }
    }
    return shared;
  }

  private static Comparator<FormedSide> precedence(Job job) {
    boolean dated = job.pours().stream().allMatch(pour -> pour.date().isPresent());
    Comparator<Pour> byDay =
        Comparator.comparing((Pour pour) -> dated ? pour.date().orElseThrow().toEpochDay() : 0L)
            .thenComparing(Pour::number);
    return Comparator.comparing((FormedSide side) -> job.pour(side.section().pour()), byDay)
        .thenComparing(FormedSide::face, Comparator.reverseOrder())
        .thenComparing(side -> side.section().code())
        .thenComparing(side -> side.side().name());
  }

  private void compare(FormedSide first, FormedSide later, Part part) {
    Span span = later.sharedWith(first);
    if (first.section().code().equals(later.section().code()) || span.isEmpty()) {
      return;
    }
    formedElsewhere.computeIfAbsent(later, side -> new ArrayList<>()).add(span);
    part.add(new Caution(later.section().code(), says(first, later, span), "FORM-1"));
  }

  private String says(FormedSide first, FormedSide later, Span span) {
    Length length = Length.ofMetres(span.toM() - span.fromM());
    String text =
        "side "
            + later.side().name()
            + " lies on side "
            + first.side().name()
            + " of "
            + first.section().code()
            + ": "
            + LengthFormat.of(length, job.units())
            + " formed once, with "
            + first.section().code()
            + " in pour "
            + first.section().pour();
    return first
        .joint(job, FormedOnce::isCastIn)
        .or(() -> later.joint(job, FormedOnce::isCastIn))
        .map(joint -> text + ", as the bulkhead that joint " + joint.code() + " goes through")
        .orElse(text);
  }

  /** Returns whether a joint's bars go through a bulkhead: cast in, not drilled. */
  static boolean isCastIn(Joint joint) {
    return (joint.kind() == JointKind.DOWEL || joint.kind() == JointKind.TIE) && !joint.drilled();
  }

  /** Returns what is left to form of a side, from its first corner to its last. */
  List<Span> left(FormedSide side) {
    double lengthM = side.side().length().metres();
    List<Span> taken = new ArrayList<>(formedElsewhere.getOrDefault(side, List.of()));
    taken.sort(Comparator.comparingDouble(Span::fromM));
    List<Span> left = new ArrayList<>();
    double from = 0;
    for (Span span : taken) {
      left.add(new Span(from, span.fromM()));
      from = Math.max(from, span.toM());
    }
    left.add(new Span(from, lengthM));
    left.removeIf(Span::isEmpty);
    return left;
  }

  /** Returns what is left at the first or the last corner of a side, if it is formed there. */
  Optional<Span> at(FormedSide side, boolean lastCorner) {
    List<Span> left = left(side);
    if (left.isEmpty()) {
      return Optional.empty();
    }
    Span span = lastCorner ? left.get(left.size() - 1) : left.get(0);
    double gap = lastCorner ? side.side().length().metres() - span.toM() : span.fromM();
    return gap < FormedSide.NEAR_M ? Optional.of(span) : Optional.empty();
  }
}
