package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import org.pourbook.job.Job;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.measure.LumberSize;
import org.pourbook.measure.Unit;

/** The rows of one section's forms: one row a material, all sides added up (FORM-1 to FORM-3). */
final class FormRows {

  private final Job job;
  private final Section section;
  private final List<FormSet> sets;
  private final Working working;
  private final Part part;

  /**
   * Returns the rows of a section.
   *
   * @param sets all of that section
   */
  FormRows(Job job, Section section, List<FormSet> sets, Part part) {
    this.job = job;
    this.section = section;
    this.sets = sets;
    this.working = new Working(job.units());
    this.part = part;
  }

  /** Adds what is formed, the boards and their splices; returns the boards' pieces. */
  List<FormPiece> boards() {
    Sum formed = lengths(sets, set -> set.run().length(), set -> 1);
    part.add(told("formed sides", formed, "FORM-1").by(sides(formed)));
    for (Map.Entry<Row, List<FormSet>> row : byBoard().entrySet()) {
      LumberSize size = row.getKey().size();
      Sum sum = lengths(row.getValue(), FormSet::board, set -> courses(set, size));
      buy(row.getKey().what(), sum, FormLumber.key(size), "FORM-2");
    }
    splices();
    return sets.stream()
        .flatMap(set -> FormPieces.boards(section, set, job.timesOf(section)).stream())
        .toList();
  }

  private record Row(LumberSize size, String what) {}

  private Map<Row, List<FormSet>> byBoard() {
    Map<Row, List<FormSet>> rows = new LinkedHashMap<>();
    for (FormSet set : sets) {
      for (LumberSize size : set.stack().boards().stream().distinct().toList()) {
        Row row = new Row(size, "form boards " + size + over(set));
        rows.computeIfAbsent(row, key -> new ArrayList<>()).add(set);
      }
    }
    return rows;
  }

  /** Returns what the crew does with boards that are higher than the face. */
  private String over(FormSet set) {
    String over = working.small(set.over());
    if (set.over().isZero()) {
      return "";
    }
    return set.run().bend().isHung() ? ", ripped by " + over : ", let into the grade by " + over;
  }

  static int courses(FormSet set, LumberSize size) {
    return (int) set.stack().boards().stream().filter(size::equals).count();
  }

  private void splices() {
    List<FormSet> butted = sets.stream().filter(set -> set.butts() > 0).toList();
    List<LumberSize> sizes =
        butted.stream().flatMap(set -> set.stack().boards().stream()).distinct().toList();
    for (LumberSize size : sizes) {
      List<FormSet> with = butted.stream().filter(set -> courses(set, size) > 0).toList();
      Sum sum =
          counts(
              with,
              set -> factor(courses(set, size)) + set.butts(),
              set -> courses(set, size) * set.butts());
      buy("splices " + size, sum, Material.SPLICE.of(size.designation()), "FORM-3");
    }
  }

  /** An amount with the sum it comes from, without its {@code =}. */
  record Sum(double amount, Unit unit, String says) {}

  private Sum lengths(
      List<FormSet> of, Function<FormSet, Length> length, ToIntFunction<FormSet> courses) {
    Length all =
        of.stream()
            .map(set -> length.apply(set).times((long) set.allSides() * courses.applyAsInt(set)))
            .reduce(Length.ZERO, Length::plus);
    Unit unit = working.lengthUnit();
    String says =
        sum(of, set -> factor(courses.applyAsInt(set)) + working.length(length.apply(set)));
    return new Sum(unit == Unit.FT ? all.feet() : all.metres(), unit, says);
  }

  Sum counts(List<FormSet> of, Function<FormSet, String> term, ToIntFunction<FormSet> count) {
    int all = of.stream().mapToInt(set -> set.allSides() * count.applyAsInt(set)).sum();
    return new Sum(all, Unit.EACH, sum(of, term));
  }

  /** Returns {@code 3 × (2 × 36'-0" + 2 × 24'-0")}: sections × (sides × term + …). */
  String sum(List<FormSet> of, Function<FormSet, String> term) {
    String sides =
        of.stream()
            .map(set -> factor(set.sides().size()) + term.apply(set))
            .collect(Collectors.joining(" + "));
    int times = job.timesOf(section);
    return times == 1 ? sides : times + " × (" + sides + ")";
  }

  static String factor(int count) {
    return count == 1 ? "" : count + " × ";
  }

  /** Whole sides of a rectangle follow from its sizes; parts of sides and runs do not. */
  private Worked sides(Sum formed) {
    double m = formed.unit().toBase(formed.amount());
    int lengths = 0;
    int widths = 0;
    for (FormSet set : sets) {
      for (String side : set.sides()) {
        boolean along = side.startsWith("side L");
        if (!isWhole(set.run().length(), along)) {
          return new Worked.Laid(m);
        }
        lengths += along ? 1 : 0;
        widths += along ? 0 : 1;
      }
    }
    Worked along = SectionFigure.LENGTH.of(section, job.units()).times(lengths);
    Worked across = SectionFigure.WIDTH.of(section, job.units()).times(widths);
    Worked one = lengths == 0 ? across : widths == 0 ? along : along.plus(across);
    return Worked.orLaid(Floors.counted(job, section, one), m);
  }

  private boolean isWhole(Length formed, boolean along) {
    return section.formed().run().isEmpty()
        && section.shape() instanceof Shape.Rectangle plan
        && formed.equals(along ? plan.length() : plan.width());
  }

  private Quantity told(String what, Sum sum, String rule) {
    return Quantity.told(
        section.code(), what, sum.amount(), sum.unit(), says(sum), rule, section.pour());
  }

  void tell(String what, Sum sum, String rule) {
    part.add(told(what, sum, rule));
  }

  void buy(String what, Sum sum, MaterialKey material, String rule) {
    if (sum.amount() == 0) {
      return;
    }
    part.add(
        Quantity.of(
            section.code(),
            what,
            sum.amount(),
            sum.unit(),
            says(sum),
            rule,
            material,
            section.pour()));
  }

  private static String says(Sum sum) {
    String unit = sum.unit() == Unit.EACH ? "" : " " + sum.unit().label();
    return sum.says() + " = " + Working.number(sum.amount()) + unit;
  }
}
