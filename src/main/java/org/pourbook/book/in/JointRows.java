package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.pourbook.book.InputSheet;
import org.pourbook.book.in.Table.TableRow;
import org.pourbook.job.Joint;
import org.pourbook.job.JointKind;
import org.pourbook.job.Section;
import org.pourbook.job.SidesText;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthText;
import org.pourbook.measure.Unit;

/** The joints of a job. */
final class JointRows {

  /** Thinner slabs are tied, not doweled, by default (DOW-1). */
  private static final Length DOWEL_FROM = Length.ofInches(5);

  private final JobDraft job;
  private final SectionRows sections;
  private final Set<String> codes = new HashSet<>();

  private JointRows(JobDraft job, SectionRows sections) {
    this.job = job;
    this.sections = sections;
  }

  /** Returns the sound joints. */
  static List<Joint> read(JobDraft job, SectionRows sections) {
    JointRows rows = new JointRows(job, sections);
    List<Joint> joints = new ArrayList<>();
    job.rows(InputSheet.JOINTS).forEach(row -> rows.joint(row).ifPresent(joints::add));
    return joints;
  }

  private Optional<Joint> joint(TableRow row) {
    Cells cells = job.cells(row);
    Optional<String> code = SectionNames.unique(cells, "Joint", codes);
    Optional<String> name = SectionNames.existing(cells, "Section", sections);
    Optional<Section> section = name.flatMap(sections::section);
    Optional<JointKind> kind = kind(cells, section);
    Optional<Length> length = cells.feet("Length");
    Optional<String> side = side(cells, name, section);
    Optional<String> bar = bar(cells, kind);
    Optional<Length> spacing = cells.length("Spacing");
    Optional<Length> barLength = cells.length("Bar length");
    Optional<Cells.LengthOrWord> embedment = cells.lengthOrWord("Embedment", "yes", "no");
    Length drop = cells.length("Drop").orElse(Length.ZERO);
    Optional<Length> filler = cells.length("Filler depth");
    checkDowel(cells, kind, section);
    if (!job.accepts(cells)) {
      return Optional.empty();
    }
    Optional<Length> depth = embedment.flatMap(Cells.LengthOrWord::length);
    boolean drilled =
        depth.isPresent()
            || embedment.flatMap(Cells.LengthOrWord::word).filter("yes"::equals).isPresent();
    return Optional.of(
        new Joint(
            code.orElseThrow(),
            name,
            side,
            kind.orElseThrow(),
            length.orElseThrow(),
            bar,
            spacing,
            barLength,
            drilled,
            depth,
            drop,
            filler,
            row.place()));
  }

  private static Optional<JointKind> kind(Cells cells, Optional<Section> section) {
    if (!cells.isBlank("Kind")) {
      return cells.choice("Kind", JointKind.values(), JointKind::label);
    }
    if (section.isEmpty()) {
      if (cells.isBlank("Section")) {
        cells.refuse("Kind", "dowel, tie, step, isolation; or a Section whose thickness decides");
      }
      return Optional.empty();
    }
    return Optional.of(
        section.get().thickness().isLessThan(DOWEL_FROM) ? JointKind.TIE : JointKind.DOWEL);
  }

  private static Optional<String> side(
      Cells cells, Optional<String> name, Optional<Section> section) {
    Optional<String> side = cells.code("Side");
    if (side.isPresent() && name.isEmpty()) {
      cells.refuse("Side", "a Section whose side it is");
    } else if (side.isPresent() && section.isPresent()) {
      List<String> names = SidesText.names(section.get().shape());
      Optional<String> same =
          names.stream().filter(known -> known.equalsIgnoreCase(side.get())).findFirst();
      if (same.isEmpty()) {
        cells.refuse("Side", names.isEmpty() ? "blank: it has no sides" : String.join(", ", names));
      }
      return same;
    }
    return side;
  }

  private static Optional<String> bar(Cells cells, Optional<JointKind> kind) {
    Unit bare = cells.units().isMetric() ? Unit.MM : Unit.IN;
    return cells.parsed(
        "Bar",
        text -> {
          boolean known = BarSize.named(text).isPresent();
          boolean dowel = kind.filter(k -> k == JointKind.DOWEL).isPresent();
          boolean diameter = LengthText.read(text, bare).filter(Length::isPositive).isPresent();
          return known || (diameter && (dowel || kind.isEmpty()))
              ? Optional.of(text)
              : Optional.empty();
        });
  }

  /** The published table of dowels starts at 5 in: below it the builder must say what is wanted. */
  private static void checkDowel(Cells cells, Optional<JointKind> kind, Optional<Section> section) {
    boolean thin =
        section.filter(slab -> slab.thickness().isLessThan(DOWEL_FROM)).isPresent()
            || cells.isBlank("Section");
    if (kind.filter(k -> k == JointKind.DOWEL).isEmpty() || !thin) {
      return;
    }
    for (String heading : List.of("Bar", "Spacing")) {
      if (cells.isBlank(heading)) {
        cells.refuse(heading, "written: the rule knows dowels of slabs 5 in and thicker only");
      }
    }
  }
}
