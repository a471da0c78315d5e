package org.pourbook.book.in;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.pourbook.book.InputSheet;
import org.pourbook.book.in.Table.TableRow;
import org.pourbook.job.Change;
import org.pourbook.job.ChangeState;
import org.pourbook.job.DepthCheck;
import org.pourbook.job.Extra;
import org.pourbook.job.ExtraKind;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;

/** The owner's changes, the extras and the depth checks of a job. */
final class OtherRows {

  private OtherRows() {}

  /** Returns the sound changes. */
  static List<Change> changes(JobDraft job, SectionRows sections) {
    List<Change> changes = new ArrayList<>();
    Set<String> codes = new HashSet<>();
    for (TableRow row : job.rows(InputSheet.CHANGES)) {
      Cells cells = job.cells(row);
      Optional<String> code = SectionNames.unique(cells, "Change", codes);
      Optional<LocalDate> date = cells.date("Date");
      String askedBy = cells.textOrEmpty("Asked by");
      Optional<String> what = cells.text("What");
      ChangeState state =
          cells.choice("State", ChangeState.values(), ChangeState::label).orElse(ChangeState.OPEN);
      Optional<String> section = cells.code("Section");
      if (state == ChangeState.TAKEN_UP && section.filter(sections::has).isEmpty()) {
        cells.refuse("Section", "the section of this job that has taken the change up");
      } else if (section.filter(named -> !sections.has(named)).isPresent()) {
        cells.note("Section", "a section of this job");
      }
      if (job.accepts(cells)) {
        changes.add(
            new Change(
                code.orElseThrow(),
                date,
                askedBy,
                what.orElseThrow(),
                section,
                state,
                row.place()));
      }
    }
    return changes;
  }

  /** Returns the sound extras. */
  static List<Extra> extras(JobDraft job, SectionRows sections, PourRows pours) {
    List<Extra> extras = new ArrayList<>();
    for (TableRow row : job.rows(InputSheet.EXTRAS)) {
      Cells cells = job.cells(row);
      Optional<String> what = cells.text("What");
      String size = cells.code("Size").orElse("");
      double quantity = cells.decimal("Quantity").orElse(1);
      Optional<String> unit = cells.text("Unit");
      int pour = cells.count("Pour").orElse(1);
      Optional<String> section = SectionNames.existing(cells, "Section", sections);
      ExtraKind kind =
          cells.choice("Kind", ExtraKind.values(), ExtraKind::label).orElse(ExtraKind.MATERIAL);
      String notes = cells.textOrEmpty("Notes");
      if (job.accepts(cells)) {
        extras.add(
            new Extra(
                PriceRows.canonical(what.orElseThrow()),
                size,
                quantity,
                unit.orElseThrow(),
                pours.named(pour, cells.place("Pour")).number(),
                section,
                kind,
                notes,
                row.place()));
      }
    }
    return extras;
  }

  /** Returns the sound depth checks. */
  static List<DepthCheck> depthChecks(JobDraft job, SectionRows sections) {
    List<DepthCheck> checks = new ArrayList<>();
    for (TableRow row : job.rows(InputSheet.DEPTH_CHECKS)) {
      Cells cells = job.cells(row);
      Optional<String> section = SectionNames.existing(cells, "Section", sections);
      Optional<Length> x = cells.feet("X");
      Optional<Length> y = cells.feet("Y");
      Optional<Length> depth = cells.length("Depth");
      section
          .flatMap(sections::section)
          .map(Section::shape)
          .ifPresent(
              shape -> {
                if (shape instanceof Shape.Rectangle rectangle) {
                  checkWithin(cells, "X", x, rectangle.length());
                  checkWithin(cells, "Y", y, rectangle.width());
                }
              });
      if (job.accepts(cells)) {
        checks.add(
            new DepthCheck(
                section.orElseThrow(),
                x.orElseThrow(),
                y.orElseThrow(),
                depth.orElseThrow(),
                row.place()));
      }
    }
    return checks;
  }

  private static void checkWithin(Cells cells, String heading, Optional<Length> at, Length room) {
    if (at.isPresent() && (at.get().nanometres() < 0 || at.get().isMoreThan(room))) {
      String far = LengthFormat.of(room, cells.units());
      cells.refuse(heading, "a point of the section, from its corner to " + far);
    }
  }
}
