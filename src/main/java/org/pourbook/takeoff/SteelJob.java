package org.pourbook.takeoff;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.pourbook.job.Job;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.job.Where;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
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
  Length topCover(Section section) {
    boolean outside = section.where() == Where.OUTSIDE;
    return setting(outside ? Setting.TOP_COVER_OUTSIDE : Setting.TOP_COVER);
  }

  /** Returns a length as a crew reads it. */
  String show(Length length) {
    return LengthFormat.of(length, units());
  }

  /** Returns a spacing or thickness as a crew reads it. */
  String small(Length length) {
    return LengthFormat.small(length, units());
  }

  /** Returns {@code = 962.33 ft}; a whole number without decimals. */
  static String equal(double amount, Unit unit) {
    int places = amount == StrictMath.rint(amount) ? 0 : amount < 1 ? 4 : 2;
    return " = " + amount(amount, unit, places);
  }

  static String amount(double amount, Unit unit, int places) {
    String number =
        BigDecimal.valueOf(amount).setScale(places, RoundingMode.HALF_UP).toPlainString();
    return unit == Unit.EACH ? number : number + " " + unit.label();
  }

  void caution(String section, String says, String rule) {
    part.add(new Caution(section, says, rule));
  }
}
