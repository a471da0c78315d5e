package org.pourbook.book.in;

import java.util.Optional;
import java.util.Set;

/** Checks of codes that a job's rows give or refer to. */
final class SectionNames {

  private SectionNames() {}

  /** Returns the section that a cell names; one that the job does not have is refused. */
  static Optional<String> existing(Cells cells, String heading, SectionRows sections) {
    Optional<String> section = cells.code(heading);
    if (section.isPresent() && !sections.has(section.get())) {
      cells.refuse(heading, "a section of this job");
    }
    return section;
  }

  /** Returns the row's own code; one that was there before is refused. */
  static Optional<String> unique(Cells cells, String heading, Set<String> before) {
    Optional<String> code = cells.code(heading);
    if (code.isPresent() && !before.add(code.get())) {
      cells.refuse(heading, "a code that is unique within the job");
    }
    return code;
  }
}
