package org.pourbook.book.in;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.job.BarMat;
import org.pourbook.job.BarRun;
import org.pourbook.job.BarText;
import org.pourbook.job.Edge;
import org.pourbook.job.Finish;
import org.pourbook.job.JointSpacing;
import org.pourbook.job.Kind;
import org.pourbook.job.Position;
import org.pourbook.job.Practice;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.job.SidesText;
import org.pourbook.job.Where;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;

/** Reads a row of Sections and fills in what it leaves blank. */
final class SectionCells {

  /** Kilograms a m3 in one pound a yd3. */
  private static final double KG_PER_M3 = Unit.LB.toBase(1) / Unit.YD3.toBase(1);

  private static final String MESH = "\\d+(\\.\\d+)?\\s*[xX×]\\s*\\d+(\\.\\d+)?\\b.*";

  private final JobDraft job;
  private final Practice practice;
  private final PourRows pours;
  private final OutlineRows outlines;

  SectionCells(JobDraft job, Practice practice, PourRows pours, OutlineRows outlines) {
    this.job = job;
    this.practice = practice;
    this.pours = pours;
    this.outlines = outlines;
  }

  /**
   * Returns the section; empty when a cell was refused.
   *
   * @param parent of a part, where its row is sound
   */
  Optional<Section> section(SectionHead head, Optional<Section> parent) {
    Cells cells = head.cells();
    Kind kind = head.kind().orElse(Kind.SLAB);
    Optional<Shape> shape = ShapeCells.shape(cells, head.code(), kind, outlines, job);
    Optional<Length> thickness = cells.length("Thickness");
    Section section = read(head, kind, parent, shape, thickness.orElse(Length.ZERO));
    if (shape.isEmpty() || thickness.isEmpty()) {
      // The row is refused; its other cells were read for their own problems.
      job.leaveOut();
      return Optional.empty();
    }
    if (head.isPart()) {
      PartChecks.check(section, parent, cells);
    } else if (section.drop().isPositive()) {
      cells.note("Drop", "not used: only a recess lies lower than its slab");
    }
    SectionSizes.check(section, cells);
    return job.accepts(cells) ? Optional.of(section) : Optional.empty();
  }

  private Section read(
      SectionHead head,
      Kind kind,
      Optional<Section> parent,
      Optional<Shape> plan,
      Length thickness) {
    Cells cells = head.cells();
    Shape shape = plan.orElse(new Shape.Round(Length.ofFeet(1)));
    Where where =
        cells
            .choice("Where", Where.values(), Where::label)
            .or(() -> parent.map(Section::where))
            .orElse(Where.INSIDE);
    int pour = cells.count("Pour").or(() -> parent.map(Section::pour)).orElse(1);
    Length drop = cells.length("Drop").orElse(Length.ZERO);
    Optional<Edge> edge = EdgeCells.edge(cells, kind, thickness, plan);
    if (edge.isEmpty()) {
      outlines.refuseTurnedDown(head.code(), job);
    }
    Optional<Position> position = position(cells);
    return new Section(
        head.code(),
        kind,
        where,
        mix(cells, parent, pour),
        cells.count("Count").orElse(1),
        pour,
        shape,
        thickness,
        head.isPart() ? head.partOf() : Optional.empty(),
        position,
        FallCell.read(cells).orElse(0.0),
        cells.yesNo("Base follows").orElse(true),
        drop,
        edge,
        edgeBars(cells, kind, edge),
        cells.length("Base").orElse(KindDefaults.base(kind, parent, practice)),
        cells.yesNo("Vapor retarder").orElse(KindDefaults.retarder(kind, where, parent, practice)),
        bars(cells),
        mesh(cells),
        fiber(cells),
        sides(cells, "Formed sides", plan)
            .orElse(KindDefaults.formed(kind, drop, shape, position, parent)),
        cells.length("Form height").orElse(KindDefaults.formHeight(kind, drop, edge, thickness)),
        cells
            .choice("Finish", Finish.values(), Finish::label)
            .orElse(KindDefaults.finish(kind, where)),
        joints(cells, kind),
        percent(cells),
        cells.textOrEmpty("Notes"),
        head.row().place());
  }

  private String mix(Cells cells, Optional<Section> parent, int number) {
    return cells
        .code("Mix")
        .or(() -> parent.filter(slab -> slab.pour() == number).map(Section::mix))
        .orElseGet(() -> pours.mixOf(pours.named(number, cells.place("Pour"))));
  }

  private static Optional<Position> position(Cells cells) {
    Optional<Length> x = cells.feet("X");
    Optional<Length> y = cells.feet("Y");
    if (cells.isBlank("X") != cells.isBlank("Y")) {
      cells.refuse(cells.isBlank("X") ? "X" : "Y", "X and Y, or neither");
    }
    return x.isPresent() && y.isPresent()
        ? Optional.of(new Position(x.get(), y.get()))
        : Optional.empty();
  }

  private static Optional<BarRun> edgeBars(Cells cells, Kind kind, Optional<Edge> edge) {
    Optional<BarRun> bars =
        cells
            .parsed(
                "Edge bars",
                text ->
                    isNone(text)
                        ? Optional.of(Optional.<BarRun>empty())
                        : BarText.run(text).map(Optional::of))
            .flatMap(run -> run);
    if (bars.isPresent() && kind.isFloor() && edge.isEmpty()) {
      cells.note("Edge bars", "an Edge depth: they run along a turned-down edge, and are not used");
    }
    return bars;
  }

  private static Optional<BarMat> bars(Cells cells) {
    Unit bare = cells.units().isMetric() ? Unit.MM : Unit.IN;
    return cells
        .parsed(
            "Bars",
            text ->
                isNone(text)
                    ? Optional.of(Optional.<BarMat>empty())
                    : BarText.mat(text, bare).map(Optional::of))
        .flatMap(mat -> mat);
  }

  private static Optional<String> mesh(Cells cells) {
    return cells
        .parsed(
            "Mesh",
            text -> isNone(text) || text.matches(MESH) ? Optional.of(text) : Optional.empty())
        .filter(style -> !isNone(style));
  }

  private static boolean isNone(String text) {
    return text.toLowerCase(Locale.ROOT).equals("none");
  }

  private static OptionalDouble fiber(Cells cells) {
    double factor = cells.units().isMetric() ? 1 : KG_PER_M3;
    return cells
        .number("Fiber")
        .filter(dose -> dose.signum() > 0)
        .map(dose -> OptionalDouble.of(dose.doubleValue() * factor))
        .orElse(OptionalDouble.empty());
  }

  /** Returns the sides that a cell names; not read where the plan was refused. */
  static Optional<Sides> sides(Cells cells, String heading, Optional<Shape> plan) {
    Unit bare = cells.units().isMetric() ? Unit.M : Unit.FT;
    return plan.flatMap(shape -> cells.parsed(heading, text -> SidesText.read(text, shape, bare)));
  }

  private static JointSpacing joints(Cells cells, Kind kind) {
    return cells
        .lengthOrWord("Joint spacing", "none")
        .map(
            spacing ->
                spacing.word().isPresent()
                    ? JointSpacing.NONE
                    : new JointSpacing(false, spacing.length()))
        .orElse(KindDefaults.joints(kind));
  }

  private static OptionalDouble percent(Cells cells) {
    return cells
        .percent("Waste %")
        .map(percent -> OptionalDouble.of(percent.doubleValue()))
        .orElse(OptionalDouble.empty());
  }
}
