package org.pourbook.book.in;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.job.Change;
import org.pourbook.job.DepthCheck;
import org.pourbook.job.Extra;
import org.pourbook.job.Job;
import org.pourbook.job.Joint;
import org.pourbook.job.Plate;
import org.pourbook.job.Practice;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.OnOffer;

/** Makes a job of its rows, or leaves it out with all its problems. */
final class JobBuilder {

  private final PracticeRows practices;
  private final OnOffer onOffer;

  /** Shared names as first written, however case and spaces differ later. */
  private final Map<String, String> places = new HashMap<>();

  JobBuilder(PracticeRows practices, OnOffer onOffer) {
    this.practices = practices;
    this.onOffer = onOffer;
  }

  /** Returns the job; empty when one of its rows has a problem. */
  Optional<Job> job(JobDraft draft) {
    Cells cells = draft.cells();
    String description = cells.textOrEmpty("Description");
    String customer = cells.textOrEmpty("Customer");
    String site = cells.textOrEmpty("Site");
    String notes = cells.textOrEmpty("Notes");
    Optional<String> deliverTo =
        cells
            .text("Deliver to")
            .filter(name -> !name.equalsIgnoreCase("site"))
            .map(name -> places.computeIfAbsent(MaterialKey.normal(name), key -> name));
    Optional<BigDecimal> tax = cells.percent("Tax %");
    Practice practice = practices.of(draft);
    PourRows pours = new PourRows(draft, practice, onOffer);
    SectionRows sections = new SectionRows(draft, practice, pours);
    List<Plate> plates = PlateRows.read(draft, sections, practice);
    List<Joint> joints = JointRows.read(draft, sections);
    List<Change> changes = OtherRows.changes(draft, sections);
    List<Extra> extras = OtherRows.extras(draft, sections, pours);
    List<DepthCheck> checks = OtherRows.depthChecks(draft, sections);
    draft.accepts(cells);
    if (draft.isRefused()) {
      return Optional.empty();
    }
    return Optional.of(
        new Job(
            draft.code(),
            description,
            customer,
            site,
            notes,
            draft.units(),
            deliverTo,
            tax,
            pours.pours(),
            sections.sections(),
            plates,
            joints,
            changes,
            extras,
            checks,
            practice,
            cells.place()));
  }
}
