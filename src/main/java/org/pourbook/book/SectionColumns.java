package org.pourbook.book;

import static org.pourbook.book.ColumnGroup.EDGE;
import static org.pourbook.book.ColumnGroup.FINISH;
import static org.pourbook.book.ColumnGroup.FORMS;
import static org.pourbook.book.ColumnGroup.NOTES;
import static org.pourbook.book.ColumnGroup.POUR;
import static org.pourbook.book.ColumnGroup.SIZE;
import static org.pourbook.book.ColumnGroup.STEEL;
import static org.pourbook.book.ColumnGroup.UNDER;
import static org.pourbook.book.ColumnGroup.WHAT;
import static org.pourbook.book.Columns.choice;
import static org.pourbook.book.Columns.code;
import static org.pourbook.book.Columns.count;
import static org.pourbook.book.Columns.feet;
import static org.pourbook.book.Columns.inches;
import static org.pourbook.book.Columns.job;
import static org.pourbook.book.Columns.number;
import static org.pourbook.book.Columns.of;
import static org.pourbook.book.Columns.percent;
import static org.pourbook.book.Columns.place;
import static org.pourbook.book.Columns.text;
import static org.pourbook.book.Columns.yesNo;

import java.util.List;
import org.pourbook.measure.Length;

/** Columns of the sheets Sections and Outlines. */
final class SectionColumns {

  /** Joints of a pattern a foot or 300 mm apart are sawn; closer ones are stamped. */
  private static final Length CLOSEST_JOINTS = Length.ofInches(11);

  private static final Length LEAST_SIDE = Length.ofInches(1);
  private static final Length THINNEST = Length.ofInches(3, 16);

  static final List<InputColumn> SECTIONS =
      List.of(
          job(),
          code("Section", "code, unique within the job").mustBeGiven(),
          choice(
                  WHAT,
                  "Kind",
                  List.of("slab", "recess", "thickening", "footing", "pier"),
                  "what it is")
              .usually("slab"),
          choice(
                  WHAT,
                  "Where",
                  List.of("inside", "outside", "garage"),
                  "outside: no retarder, broom")
              .usually("inside"),
          code("Part of", "the slab that a recess or thickening lies in"),
          count(WHAT, "Count", "identical sections").usually("1"),
          count(POUR, "Pour", "which pour of the job").usually("1"),
          of(POUR, "Mix", CellKind.SIZE, "concrete of this section").usually("the pour's"),
          feet(SIZE, "Length", "plan size; blank with an outline").aboveZero().from(LEAST_SIDE),
          feet(SIZE, "Width", "plan size; blank with an outline").aboveZero().from(LEAST_SIDE),
          feet(SIZE, "Diameter", "of a round pier, in place of Length and Width")
              .aboveZero()
              .from(LEAST_SIDE),
          inches(SIZE, "Thickness", "of the concrete; depth of a footing, pier or thickening")
              .mustBeGiven()
              .aboveZero()
              .from(THINNEST),
          place("X", "corner in the job's plan; of a part in its parent's"),
          place("Y", "corner in the job's plan; of a part in its parent's"),
          number(SIZE, "Fall", "fall of the top along Length")
              .in(ColumnUnit.FALL)
              .zeroOrMore()
              .usually("0"),
          yesNo(SIZE, "Base follows", "does the base fall with the top").usually("yes"),
          inches(SIZE, "Drop", "how far the top lies below the parent's top")
              .zeroOrMore()
              .usually("0"),
          inches(EDGE, "Edge depth", "turned-down edge: total depth from the top")
              .zeroOrMore()
              .usually("none"),
          inches(EDGE, "Edge width", "width at the bottom").zeroOrMore(),
          of(EDGE, "Edge sides", CellKind.SIDES, "all, 2L+W, L1, or point numbers").usually("all"),
          of(EDGE, "Edge bars", CellKind.BAR_RUN, "2 #4 along edge or footing; upright in a pier")
              .usually("none"),
          inches(UNDER, "Base", "compacted base under it").zeroOrMore().usually("Practice"),
          yesNo(UNDER, "Vapor retarder", "under it").usually("Practice"),
          of(STEEL, "Bars", CellKind.BARS, "#4 @ 16 EW, or #4 @ 12 x #3 @ 18").usually("none"),
          of(STEEL, "Mesh", CellKind.SIZE, "6x6-W1.4xW1.4").usually("none"),
          number(STEEL, "Fiber", "dose").in(ColumnUnit.DOSE).zeroOrMore().usually("none"),
          of(
                  FORMS,
                  "Formed sides",
                  CellKind.SIDES,
                  "all, none, a length, 2L+W, L1, or point numbers")
              .usually("all; none for footing, pier, thickening"),
          inches(FORMS, "Form height", "of the face that is formed")
              .aboveZero()
              .usually("edge depth, else thickness"),
          choice(FINISH, "Finish", List.of("trowel", "broom", "float", "none"), "of the top")
              .usually("trowel, outside broom"),
          of(FINISH, "Joint spacing", CellKind.LENGTH_OR_WORD, "largest panel side, or none")
              .in(ColumnUnit.FEET)
              .aboveZero()
              .from(CLOSEST_JOINTS)
              .usually("rule JOINT-1"),
          percent(POUR, "Waste %", "allowance of this section").usually("Practice"),
          text(NOTES, "Notes", "anything"));

  static final List<InputColumn> OUTLINES =
      List.of(
          job(),
          code("Section", "the section's code").mustBeGiven(),
          count(WHAT, "Ring", "1 outside, 2 and more openings").usually("1"),
          number(WHAT, "Point", "order within the ring").usually("as the rows stand"),
          place("X", "along Length").mustBeGiven(),
          place("Y", "along Width").mustBeGiven(),
          choice(
                  FORMS,
                  "Side",
                  List.of("formed", "turned down", "existing", "none"),
                  "from this point to the next")
              .usually("by Formed sides and Edge sides"));

  private SectionColumns() {}
}
