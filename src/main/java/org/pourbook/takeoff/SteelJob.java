package org.pourbook.takeoff;

import org.pourbook.job.Job;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.job.Where;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;

/** What the steel rules of one job share. */
record SteelJob(Job job, OnOffer onOffer, Part part, Laps laps) {

  static SteelJob of(Job job, OnOffer onOffer) {
    Part part = new Part();
    return new SteelJob(job, onOffer, part, new Laps(job, part));
  }

  UnitSystem units() {
    return job.units();
  }

  Length setting(Setting setting) {
    return job.practice().length(setting);
  }

  /** Returns how far the upper bars lie below a section's top. */
  static Length topCover(Job job, Section section) {
    boolean outside = section.where() == Where.OUTSIDE;
    return job.practice().length(outside ? Setting.TOP_COVER_OUTSIDE : Setting.TOP_COVER);
  }

  Working working() {
    return new Working(job.units());
  }

  /** Returns a length as a crew reads it. */
  String show(Length length) {
    return working().length(length);
  }

  /** Returns a spacing or thickness as a crew reads it. */
  String small(Length length) {
    return working().small(length);
  }

  /** Returns the end of a working: {@code = 962.33 ft}, of pieces without a unit. */
  static String equal(double amount, Unit unit) {
    return " = " + Working.number(amount) + (unit == Unit.EACH ? "" : " " + unit.label());
  }

  void caution(String section, String says, String rule) {
    part.add(new Caution(section, says, rule));
  }
}
