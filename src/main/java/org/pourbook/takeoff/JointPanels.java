package org.pourbook.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Section;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.outline.Placed;
import org.pourbook.takeoff.FloorPanels.Panel;
import org.pourbook.takeoff.rule.ControlJoints;

/** What is told of a floor's panels: their sizes, and where the limits cannot be kept (JOINT-1). */
final class JointPanels {

  private static final String RULE = "JOINT-1";

  private final Job job;
  private final Section section;
  private final List<Panel> panels;
  private final Working working;
  private final Part part;

  private JointPanels(Part part, Job job, Section section, List<Panel> panels) {
    this.part = part;
    this.job = job;
    this.section = section;
    this.panels = panels;
    this.working = new Working(job.units());
  }

  /** Adds the panels of one section, and the cautions that they give cause for. */
  static void add(Part part, Job job, Section section, List<Panel> panels, Length largest) {
    JointPanels told = new JointPanels(part, job, section, panels);
    if (!panels.isEmpty()) {
      told.sizes();
      told.limits(largest);
    }
    told.unplaced();
  }

  private void sizes() {
    int times = job.timesOf(section);
    Map<String, Integer> counts = new LinkedHashMap<>();
    panels.stream()
        .sorted(Comparator.comparing(Panel::longSide).thenComparing(Panel::shortSide).reversed())
        .forEach(panel -> counts.merge(text(panel), 1, Integer::sum));
    String how =
        counts.entrySet().stream()
            .map(size -> size.getValue() + " of " + size.getKey())
            .collect(Collectors.joining(", "));
    part.add(
        Quantity.told(
            section.code(),
            "panels",
            (double) panels.size() * times,
            Unit.EACH,
            how + working.times(times),
            RULE,
            section.pour()));
  }

  private String text(Panel panel) {
    return working.length(panel.longSide())
        + " × "
        + working.length(panel.shortSide())
        + " ("
        + ratio(panel).setScale(2, RoundingMode.HALF_UP)
        + (panel.rectangle() ? "" : ", no rectangle")
        + ")";
  }

  private static BigDecimal ratio(Panel panel) {
    return BigDecimal.valueOf(panel.longSide().nanometres())
        .divide(BigDecimal.valueOf(panel.shortSide().nanometres()), 9, RoundingMode.HALF_UP);
  }

  private void limits(Length largest) {
    List<Panel> unsound =
        panels.stream()
            .filter(p -> !ControlJoints.isSound(p.longSide(), p.shortSide(), largest))
            .toList();
    unsound.stream()
        .max(Comparator.comparing(JointPanels::ratio))
        .ifPresent(
            worst ->
                caution(
                    unsound.size()
                        + " of "
                        + panels.size()
                        + " panels are longer than "
                        + working.length(largest)
                        + " or than 1.5 × their width, the worst "
                        + text(worst)
                        + ": a crack beside the joints is likely; move joints, or reinforce there."));
    long odd = panels.stream().filter(panel -> !panel.rectangle()).count();
    if (odd > 0) {
      caution(
          odd
              + " of "
              + panels.size()
              + " panels are no rectangles; sizes are those of the rectangle round them. Let joints"
              + " meet the sides square, and leave no corner sharper than 60°.");
    }
  }

  /** A recess whose place is not known has corners that no joint was planned for. */
  private void unplaced() {
    for (Section recess : job.partsOf(section)) {
      boolean known = recess.count() == 1 && Placed.in(section, recess).isPresent();
      if (recess.kind() == Kind.RECESS && !known) {
        caution(
            "No joints are planned from the corners of recess "
                + recess.code()
                + ": give its X and Y, each recess on a row of its own.");
      }
    }
  }

  private void caution(String says) {
    part.add(new Caution(section.code(), says, RULE));
  }
}
