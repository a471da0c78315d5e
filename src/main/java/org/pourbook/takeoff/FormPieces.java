package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.job.Section;
import org.pourbook.measure.Length;
import org.pourbook.measure.LumberSize;

/** The pieces that a section's boards are cut into, by the side they go to (FORM-3). */
final class FormPieces {

  private FormPieces() {}

  /** Returns the pieces of a set, longest first within a side; {@code times} sections alike. */
  static List<FormPiece> boards(Section section, FormSet set, int times) {
    List<FormPiece> pieces = new ArrayList<>();
    for (String side : set.sides()) {
      for (LumberSize size : set.stack().boards().stream().distinct().toList()) {
        for (Length length : set.pieces().stream().distinct().toList()) {
          long alike = set.pieces().stream().filter(length::equals).count();
          int count = (int) alike * FormRows.courses(set, size) * times;
          pieces.add(
              new FormPiece(
                  "form boards " + size,
                  FormLumber.key(size),
                  true,
                  length,
                  count,
                  section.code() + " " + side,
                  section.pour(),
                  set.joined(size)));
        }
      }
    }
    return pieces;
  }
}
