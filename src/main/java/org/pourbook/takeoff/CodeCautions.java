package org.pourbook.takeoff;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.job.Shape;
import org.pourbook.job.Where;
import org.pourbook.measure.Length;
import org.pourbook.outline.Figure;
import org.pourbook.outline.Figures;
import org.pourbook.takeoff.rule.CodeMinimums;

/** Cautions where a section is less than a code asks, or where its sizes make no sense. */
final class CodeCautions {

  private static final String DECIDES = " The local code and a licensed designer decide.";
  private static final Length WIDE_PIER = Length.ofFeet(3);
  private static final Pattern MIL = Pattern.compile("\\s*(\\d+(?:\\.\\d+)?)\\s*mil\\s*");

  private final Job job;
  private final Working working;
  private final Part part = new Part();

  private CodeCautions(Job job) {
    this.job = job;
    this.working = new Working(job.units());
  }

  /** Returns the cautions of all sections and of the settings in force. */
  static Part of(Job job) {
    CodeCautions cautions = new CodeCautions(job);
    for (Section section : job.sections()) {
      switch (section.kind()) {
        case SLAB -> cautions.floor(section);
        case RECESS -> {
          cautions.floor(section);
          cautions.recess(section);
        }
        case THICKENING -> cautions.thickening(section);
        case FOOTING -> cautions.footing(section);
        case PIER -> cautions.pier(section);
      }
    }
    OverlapCautions.add(cautions.part, job);
    cautions.retarder();
    cautions.cover();
    return cautions.part;
  }

  private void floor(Section section) {
    if (CodeMinimums.isThin(section.thickness())) {
      code(
          section,
          working.small(section.thickness()) + " thick, under 3-1/2\".",
          "CON-2, IRC R506.1, IBC 1910.1");
    }
    boolean inside = section.where() != Where.OUTSIDE;
    if (inside && CodeMinimums.isThinBase(section.base())) {
      code(
          section,
          working.small(section.base())
              + " of base, under 4\"; it may be left out on well-drained soils.",
          "BASE-1, IRC R506.2.2");
    }
    if (inside && section.kind() == Kind.SLAB && !section.vaporRetarder()) {
      code(section, "No vapor retarder under a floor inside.", "VR-1, IRC R506.2.3, IBC 1910.1");
    }
    joints(section);
    EdgeCautions.add(part, job, section);
  }

  private void joints(Section section) {
    Figure plan = Figures.of(section);
    Length apart =
        section.jointSpacing().none()
            ? Length.ofMetres(Math.max(plan.extentXM(), plan.extentYM()))
            : section.jointSpacing().largest().orElse(Length.ZERO);
    if (CodeMinimums.isWide(apart, section.thickness())) {
      code(
          section,
          (section.jointSpacing().none() ? "No control joints in " : "Joints up to ")
              + working.length(apart)
              + (section.jointSpacing().none() ? " of floor" : " apart")
              + ", over 36 × the thickness of "
              + working.small(section.thickness())
              + " or 18 ft.",
          "JOINT-1, ACI 302.1R-96");
    }
  }

  private void recess(Section section) {
    Section parent = Floors.parent(job, section);
    if (section.thickness().isLessThan(parent.thickness())) {
      say(
          section,
          "The recess is "
              + working.small(section.thickness())
              + " thick, its slab "
              + working.small(parent.thickness())
              + ": thinner at the step than the slab.",
          "CON-4");
    }
  }

  private void thickening(Section section) {
    if (!Floors.below(job, section).isPositive()) {
      say(
          section,
          "Thickness of a thickening is its total depth from the slab's top; this one is no deeper"
              + " than the slab and adds nothing.",
          "CON-5");
    }
  }

  private void footing(Section section) {
    Length width = Length.ofMetres(Floors.widthM(section));
    if (CodeMinimums.isSmallFooting(width, section.thickness())) {
      code(
          section,
          "The footing is "
              + working.small(width)
              + " wide and "
              + working.small(section.thickness())
              + " thick; a code asks for 12\" and 6\" (from memory).",
          "CON-5, IRC R403.1");
    }
  }

  /**
   * A bare number is feet: 12 for a pier of 12 in is easily written, and orders 144 times as much.
   */
  private void pier(Section section) {
    if (section.shape() instanceof Shape.Round round
        && round.diameter().isMoreThan(section.thickness().max(WIDE_PIER))) {
      say(
          section,
          "The pier is "
              + working.length(round.diameter())
              + " across and "
              + working.small(section.thickness())
              + " deep: is its diameter meant in another unit?",
          "CON-5");
    }
  }

  private void retarder() {
    if (job.sections().stream().noneMatch(Section::vaporRetarder)) {
      return;
    }
    Length lap = job.practice().length(Setting.RETARDER_LAP);
    if (CodeMinimums.isShortLap(lap)) {
      part.add(
          new Caution(
              "",
              "Retarder laps of " + working.small(lap) + ", under 6\"." + DECIDES,
              "VR-1, IBC 1910.1"));
    }
    String retarder = job.practice().text(Setting.RETARDER);
    if (mil(retarder).filter(CodeMinimums::isThinRetarder).isPresent()) {
      part.add(
          new Caution(
              "",
              "A retarder of " + retarder + ", under 10 mil." + DECIDES,
              "VR-1, IRC R506.2.3 (2021)"));
    }
  }

  private void cover() {
    boolean bars =
        job.sections().stream().anyMatch(s -> s.bars().isPresent() || s.edgeBars().isPresent());
    Length ground = job.practice().length(Setting.EDGE_COVER);
    if (bars && CodeMinimums.isThinGroundCover(ground)) {
      cover(
          "An edge cover of " + working.small(ground) + ", under 3\" against the ground.", "BAR-1");
    }
    for (Setting setting : List.of(Setting.TOP_COVER, Setting.TOP_COVER_OUTSIDE)) {
      Length top = job.practice().length(setting);
      if (bars && isUsed(setting) && CodeMinimums.isThinTopCover(top)) {
        cover("A top cover of " + working.small(top) + ", under 1-1/2\" (from memory).", "BAR-7");
      }
    }
  }

  private boolean isUsed(Setting topCover) {
    return job.sections().stream()
        .filter(section -> section.bars().isPresent())
        .anyMatch(
            section ->
                (section.where() == Where.OUTSIDE) == (topCover == Setting.TOP_COVER_OUTSIDE));
  }

  private void cover(String says, String rule) {
    part.add(new Caution("", says + DECIDES, rule + ", ACI 318-19 Table 20.5.1.3.1"));
  }

  private static Optional<Double> mil(String retarder) {
    Matcher matcher = MIL.matcher(retarder);
    return matcher.matches() ? Optional.of(Double.valueOf(matcher.group(1))) : Optional.empty();
  }

  private void code(Section section, String says, String rule) {
    say(section, says + DECIDES, rule);
  }

  private void say(Section section, String says, String rule) {
    part.add(new Caution(section.code(), says, rule));
  }
}
