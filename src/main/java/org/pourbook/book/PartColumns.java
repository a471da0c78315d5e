package org.pourbook.book;

import static org.pourbook.book.ColumnGroup.NOTES;
import static org.pourbook.book.ColumnGroup.POSITION;
import static org.pourbook.book.ColumnGroup.POUR;
import static org.pourbook.book.ColumnGroup.SIZE;
import static org.pourbook.book.ColumnGroup.STEEL;
import static org.pourbook.book.ColumnGroup.WHAT;
import static org.pourbook.book.Columns.choice;
import static org.pourbook.book.Columns.code;
import static org.pourbook.book.Columns.count;
import static org.pourbook.book.Columns.feet;
import static org.pourbook.book.Columns.inches;
import static org.pourbook.book.Columns.job;
import static org.pourbook.book.Columns.number;
import static org.pourbook.book.Columns.of;
import static org.pourbook.book.Columns.place;
import static org.pourbook.book.Columns.text;

import java.util.List;
import org.pourbook.measure.Length;

/** Columns of the sheets Plates, Joints, Changes, Extras and Depth checks. */
final class PartColumns {

  /** What is set closer is one: a smaller number was meant in another unit. */
  static final Length CLOSEST = Length.ofInches(1);

  static final List<InputColumn> PLATES =
      List.of(
          job(),
          code("Plate", "code of the wall").mustBeGiven(),
          code("Section", "the section it stands on"),
          feet(SIZE, "Length", "of the straight wall").mustBeGiven().aboveZero(),
          count(SIZE, "Count", "walls like it").usually("1"),
          of(STEEL, "Bolt", CellKind.SIZE, "1/2 x 10 (inches) or M12 x 250").usually("Practice"),
          feet(STEEL, "Spacing", "largest from bolt to bolt")
              .aboveZero()
              .from(CLOSEST)
              .usually("6 ft less 2 in"),
          inches(SIZE, "Plate thickness", "of the wood").aboveZero().usually("Practice"),
          inches(STEEL, "Projection", "of the bolt above the concrete")
              .aboveZero()
              .usually("plate thickness + 1 in"),
          feet(SIZE, "Piece length", "longest plate piece")
              .aboveZero()
              .from(CLOSEST)
              .usually("Practice"),
          inches(SIZE, "Width", "of the plate").aboveZero(),
          place("X", "left end in the job's plan"),
          place("Y", "left end in the job's plan"),
          number(POSITION, "Direction", "from the X axis").in(ColumnUnit.DEGREES),
          text(NOTES, "Notes", "anything"));

  static final List<InputColumn> JOINTS =
      List.of(
          job(),
          code("Joint", "code of the joint").mustBeGiven(),
          code("Section", "the section it lies at"),
          code("Side", "which side of it: L1, L2, W1, W2, or a point number"),
          choice(WHAT, "Kind", List.of("dowel", "tie", "step", "isolation"), "what it does")
              .usually("dowel; tie under 5 in"),
          feet(SIZE, "Length", "of the joint").mustBeGiven().aboveZero(),
          of(STEEL, "Bar", CellKind.SIZE, "3/4 (dowel), #4 (tie, step)").usually("rule DOW-1"),
          inches(STEEL, "Spacing", "of the bars").aboveZero().from(CLOSEST).usually("rule DOW-1"),
          inches(STEEL, "Bar length", "of one bar").aboveZero().usually("rule DOW-1"),
          of(STEEL, "Embedment", CellKind.LENGTH_OR_WORD, "drilled and bonded: a length, or yes")
              .in(ColumnUnit.INCHES)
              .aboveZero()
              .usually("cast in, nothing drilled"),
          inches(SIZE, "Drop", "of a step").zeroOrMore().usually("0"),
          inches(SIZE, "Filler depth", "of an isolation joint").aboveZero(),
          text(NOTES, "Notes", "anything"));

  static final List<InputColumn> CHANGES =
      List.of(
          job(),
          code("Change", "number of the change").mustBeGiven(),
          of(WHAT, "Date", CellKind.DATE, "when it was asked for"),
          text(WHAT, "Asked by", "who asked"),
          text(WHAT, "What", "what is to change").mustBeGiven(),
          code("Section", "the section that it touches"),
          choice(WHAT, "State", List.of("open", "taken up", "declined"), "what became of it")
              .usually("open"),
          text(NOTES, "Notes", "anything"));

  static final List<InputColumn> EXTRAS =
      List.of(
          job(),
          text(WHAT, "What", "name of the material or service in the price book").mustBeGiven(),
          of(WHAT, "Size", CellKind.SIZE, "trade size, if any"),
          number(SIZE, "Quantity", "how many or how much").mustBeGiven().aboveZero(),
          text(SIZE, "Unit", "each, ft, day …").mustBeGiven(),
          count(POUR, "Pour", "for which pour").usually("1"),
          code("Section", "for which section"),
          choice(
                  WHAT,
                  "Kind",
                  List.of("set in", "material", "rent", "service", "check"),
                  "what it is")
              .usually("material"),
          text(NOTES, "Notes", "anything"));

  static final List<InputColumn> DEPTH_CHECKS =
      List.of(
          job(),
          code("Section", "the section measured").mustBeGiven(),
          place("X", "in the plan of its outline, or from the rectangle's corner").mustBeGiven(),
          place("Y", "in the plan of its outline, or from the rectangle's corner").mustBeGiven(),
          inches(SIZE, "Depth", "from the top-of-slab line to the prepared base")
              .mustBeGiven()
              .aboveZero());

  private PartColumns() {}
}
