package org.pourbook.job;

import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.measure.Length;
import org.pourbook.problem.Place;

/**
 * One piece of slab with every default filled in.
 *
 * @param mix size of material {@code concrete}
 * @param count identical sections; of a part: for each one of its parent
 * @param pour number of the pour, from 1
 * @param thickness of the concrete; total depth from the parent's top for a thickening, depth for a
 *     footing or pier
 * @param partOf the parent's code; present for a recess or thickening
 * @param position the section's corner, of a part in its parent's plan; empty when not known
 * @param fall slope of the top along Length, a ratio (1/4 in per ft is 1/48)
 * @param baseFollows whether the base falls with the top
 * @param drop how far the top lies below the parent's top
 * @param edgeBars along the turned-down edge, the thickening or the footing; upright in a pier
 * @param base thickness of compacted base under it; zero for none
 * @param mesh style of welded wire mesh
 * @param fiberKgPerM3 dose of fiber
 * @param formHeight of the face that is formed: as written, else edge depth, else thickness (a
 *     recess: its drop)
 * @param wastePercent written for this section; empty means the Waste allowance setting (CON-6)
 * @param place where the section stands in the input
 */
public record Section(
    String code,
    Kind kind,
    Where where,
    String mix,
    int count,
    int pour,
    Shape shape,
    Length thickness,
    Optional<String> partOf,
    Optional<Position> position,
    double fall,
    boolean baseFollows,
    Length drop,
    Optional<Edge> edge,
    Optional<BarRun> edgeBars,
    Length base,
    boolean vaporRetarder,
    Optional<BarMat> bars,
    Optional<String> mesh,
    OptionalDouble fiberKgPerM3,
    Sides formed,
    Length formHeight,
    Finish finish,
    JointSpacing jointSpacing,
    OptionalDouble wastePercent,
    String notes,
    Place place) {

  /** Returns whether a form tube stands for boards: a round pier that is formed. */
  public boolean takesTube() {
    return kind == Kind.PIER && shape instanceof Shape.Round && !formed.isNone();
  }
}
