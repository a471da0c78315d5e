package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.pourbook.job.Job;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;

/** Forms of a job: boards, what holds them, tubes (FORM-1 to FORM-8). */
public final class FormTakeoff {

  private FormTakeoff() {}

  /**
   * Returns the rows, the pieces to cut and the cautions of a job's forms.
   *
   * @param onOffer which boards and stakes can be had
   */
  public static Part of(Job job, OnOffer onOffer) {
    Part part = new Part();
    List<FormedSide> sides = FormRuns.sides(job);
    List<FormRun> runs = FormRuns.of(job, sides, part);
    FormLumber lumber = new FormLumber(job, onOffer);
    FormPegs pegs = new FormPegs(job, onOffer, lumber);
    List<FormPiece> pieces = new ArrayList<>();
    for (Section section : job.sections()) {
      List<FormSet> sets = sets(job, section, runs, lumber);
      if (!sets.isEmpty()) {
        FormRows rows = new FormRows(job, section, sets, part);
        pieces.addAll(rows.boards());
        pieces.addAll(new FormSupports(job, section, sets, pegs, rows).add());
        FormCautions.of(job, section, sets, part);
      } else if (section.takesTube() && section.shape() instanceof Shape.Round round) {
        part.add(tube(job, section, round.diameter()));
      }
    }
    FormCautions.ofJoints(job, sides, part);
    ReusedForms.add(job, pieces, part);
    return part;
  }

  /** Returns the sets of a section, sides that are formed alike in one. */
  private static List<FormSet> sets(
      Job job, Section section, List<FormRun> runs, FormLumber lumber) {
    Map<FormRun, List<String>> alike = new LinkedHashMap<>();
    for (FormRun run : runs) {
      if (run.section().code().equals(section.code())) {
        alike.computeIfAbsent(run.ofAnySide(), key -> new ArrayList<>()).add(run.side());
      }
    }
    return alike.entrySet().stream()
        .map(entry -> FormSet.of(entry.getKey(), entry.getValue(), lumber, job.practice()))
        .toList();
  }

  private static Quantity tube(Job job, Section section, Length diameter) {
    Working working = new Working(job.units());
    String size =
        Working.number(job.units().isMetric() ? diameter.millimetres() : diameter.inches())
            + (job.units().isMetric() ? " mm" : " in");
    int count = job.timesOf(section);
    return Quantity.of(
        section.code(),
        "form tubes, " + working.length(section.formHeight()) + " high",
        count,
        Unit.EACH,
        "1 a pier" + working.times(count) + " = " + count,
        "FORM-1",
        Material.FORM_TUBE.of(size),
        section.pour());
  }
}
