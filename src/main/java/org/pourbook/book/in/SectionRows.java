package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.book.InputSheet;
import org.pourbook.book.in.Table.TableRow;
import org.pourbook.job.Kind;
import org.pourbook.job.Practice;
import org.pourbook.job.Section;

/** The sections of a job: first the slabs, then the parts that lie in them. */
final class SectionRows {

  private final JobDraft job;
  private final OutlineRows outlines;
  private final Map<String, SectionHead> heads = new LinkedHashMap<>();
  private final Map<String, Section> sections = new HashMap<>();

  SectionRows(JobDraft job, Practice practice, PourRows pours) {
    this.job = job;
    this.outlines = new OutlineRows(job);
    job.rows(InputSheet.SECTIONS).forEach(this::readHead);
    if (heads.isEmpty()) {
      job.refuse(job.cells().place("Job"), job.code(), "a job with a row on sheet Sections");
    }
    checkOutlines();
    SectionCells cells = new SectionCells(job, practice, pours, outlines);
    for (boolean parts : new boolean[] {false, true}) {
      for (SectionHead head : heads.values()) {
        if (head.isPart() == parts) {
          Optional<Section> parent = head.partOf().flatMap(this::section);
          cells.section(head, parent).ifPresent(section -> sections.put(section.code(), section));
        }
      }
    }
    for (SectionHead head : heads.values()) {
      section(head.code()).ifPresent(section -> checkPlace(section, head));
    }
  }

  private void readHead(TableRow row) {
    Cells cells = job.cells(row);
    Optional<String> code = cells.code("Section");
    Optional<Kind> kind =
        cells.isBlank("Kind")
            ? Optional.of(Kind.SLAB)
            : cells.choice("Kind", Kind.values(), Kind::label);
    boolean again = code.filter(heads::containsKey).isPresent();
    if (again) {
      cells.refuse("Section", "a code that is unique within the job");
    }
    // A row without a code of its own is still checked, under a name that no cell can hold.
    String key = code.filter(c -> !again).orElse("\n" + row.fromRow());
    heads.put(key, new SectionHead(key, kind, cells.code("Part of"), row, cells));
  }

  private void checkOutlines() {
    outlines
        .firstRows()
        .forEach(
            (section, row) -> {
              if (!heads.containsKey(section)) {
                job.refuse(row.place("Section"), section, "a section of this job");
              }
            });
    for (SectionHead head : heads.values()) {
      checkParent(head);
    }
  }

  private void checkParent(SectionHead head) {
    Optional<SectionHead> parent = head.partOf().map(heads::get);
    if (head.kind().isEmpty()) {
      return;
    }
    if (!head.isPart()) {
      if (head.partOf().isPresent()) {
        head.cells().refuse("Part of", "blank: only a recess or a thickening lies in a slab");
      }
    } else if (head.cells().isBlank("Part of")) {
      head.cells().refuse("Part of", "the slab that it lies in");
    } else if (head.partOf().isPresent() && parent.isEmpty()) {
      head.cells().refuse("Part of", "a section of this job");
    } else if (parent.flatMap(SectionHead::kind).filter(kind -> kind != Kind.SLAB).isPresent()) {
      head.cells().refuse("Part of", "a slab");
    }
  }

  private void checkPlace(Section part, SectionHead head) {
    List<Section> before =
        sections().stream()
            .filter(other -> other.partOf().equals(part.partOf()))
            .takeWhile(other -> !other.equals(part))
            .toList();
    TableRow row = outlines.firstRows().getOrDefault(part.code(), head.row());
    part.partOf()
        .flatMap(this::section)
        .ifPresent(slab -> PartChecks.checkPlace(part, slab, before, row, job));
  }

  /** Returns whether the job has a section of that code, sound or not. */
  boolean has(String code) {
    return heads.containsKey(code);
  }

  /** Returns the section of that code; empty when its row was refused. */
  Optional<Section> section(String code) {
    return Optional.ofNullable(sections.get(code));
  }

  /** Returns the sound sections in the order of their rows. */
  List<Section> sections() {
    List<Section> inOrder = new ArrayList<>();
    heads.keySet().forEach(code -> section(code).ifPresent(inOrder::add));
    return inOrder;
  }
}
