package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.measure.Length;
import org.pourbook.outline.FigureSide;
import org.pourbook.outline.Figures;
import org.pourbook.outline.Placed;
import org.pourbook.takeoff.FormRun.Bend;
import org.pourbook.takeoff.FormedSide.Span;

/** Finds the formed runs of a job (FORM-1). */
final class FormRuns {

  private final Job job;
  private final FormedOnce shared;

  private FormRuns(Job job, FormedOnce shared) {
    this.job = job;
    this.shared = shared;
  }

  /** Returns the runs of every section in order; shared sides are told in cautions. */
  static List<FormRun> of(Job job, List<FormedSide> sides, Part part) {
    FormRuns runs = new FormRuns(job, FormedOnce.of(job, sides, part));
    List<FormRun> all = new ArrayList<>();
    for (Section section : job.sections()) {
      all.addAll(runs.of(section, sides));
    }
    return all;
  }

  /** Returns the formed sides of every section, a recess's only inside its parent. */
  static List<FormedSide> sides(Job job) {
    List<FormedSide> sides = new ArrayList<>();
    for (Section section : job.sections()) {
      if (section.formed().run().isEmpty() && section.formHeight().isPositive()) {
        for (FigureSide side : Figures.of(section).sides()) {
          FormedSide formed = FormedSide.of(job, section, side);
          if (side.formed() && !isOnParentsEdge(job, section, side)) {
            sides.add(formed);
          }
        }
      }
    }
    return sides;
  }

  private static boolean isOnParentsEdge(Job job, Section section, FigureSide side) {
    if (section.kind() != Kind.RECESS) {
      return false;
    }
    Section parent = Floors.parent(job, section);
    return Placed.in(parent, section)
        .map(placed -> placed.sidesInside(Figures.of(parent)))
        .filter(inside -> !inside.contains(side.name()))
        .isPresent();
  }

  private List<FormRun> of(Section section, List<FormedSide> all) {
    if (section.takesTube()) {
      return List.of();
    }
    Optional<Length> given = section.formed().run();
    if (given.isPresent()) {
      return section.formHeight().isPositive()
          ? List.of(run(section, "run", given.get(), section.formHeight(), BoardEnd.OPEN))
          : List.of();
    }
    List<FormedSide> sides =
        all.stream().filter(side -> side.section().code().equals(section.code())).toList();
    List<FormRun> runs = new ArrayList<>();
    for (FormedSide side : sides) {
      runs.addAll(of(side, sides));
    }
    return runs;
  }

  private List<FormRun> of(FormedSide side, List<FormedSide> sides) {
    String name = "side " + side.side().name();
    List<FormRun> runs = new ArrayList<>();
    List<Span> left = shared.left(side);
    Optional<Span> atCorner = shared.at(side, true);
    for (Span span : left) {
      boolean whole = span.fromM() == 0 && span.toM() == side.side().length().metres();
      Length length = whole ? side.side().length() : Length.ofMetres(span.toM() - span.fromM());
      BoardEnd end = atCorner.equals(Optional.of(span)) ? end(side, sides) : BoardEnd.OPEN;
      runs.add(run(side.section(), name, length, side.face(), end));
    }
    return runs;
  }

  /** Returns what the boards of a side do at its last corner, where the next side begins. */
  private BoardEnd end(FormedSide side, List<FormedSide> sides) {
    boolean meetsNext =
        sides.stream()
            .filter(next -> isNext(side.side(), next.side()))
            .anyMatch(next -> shared.at(next, false).isPresent());
    if (!meetsNext || side.side().endAngleDeg() == 180) {
      return BoardEnd.OPEN;
    }
    boolean hung = side.section().kind() == Kind.RECESS;
    return side.side().endsAtOutsideCorner() == hung ? BoardEnd.STOPS_SHORT : BoardEnd.LAPS;
  }

  private static boolean isNext(FigureSide side, FigureSide next) {
    return side.ring() == next.ring() && side.x2M() == next.x1M() && side.y2M() == next.y1M();
  }

  private FormRun run(Section section, String name, Length length, Length face, BoardEnd end) {
    boolean hung = section.kind() == Kind.RECESS;
    boolean round = name.equals("side round");
    Bend bend = round ? (hung ? Bend.ROUND_HUNG : Bend.ROUND) : (hung ? Bend.HUNG : Bend.STRAIGHT);
    return new FormRun(section, job.timesOf(section), name, length, face, end, bend);
  }
}
