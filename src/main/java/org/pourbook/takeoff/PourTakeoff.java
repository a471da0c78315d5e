package org.pourbook.takeoff;

import java.util.List;
import org.pourbook.job.Job;
import org.pourbook.job.Placing;
import org.pourbook.job.Pour;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.outline.Figure;
import org.pourbook.outline.Figures;
import org.pourbook.outline.FloorPlan;
import org.pourbook.outline.FloorPlan.Band;
import org.pourbook.takeoff.rule.PlacingTime;

/** Strips, their times, the pump and the placing labor of each pour (POUR-1, POUR-2). */
final class PourTakeoff {

  private final Job job;
  private final Working working;
  private final boolean laborPriced;
  private final Part part = new Part();

  private PourTakeoff(Job job, OnOffer onOffer) {
    this.job = job;
    this.working = new Working(job.units());
    this.laborPriced = onOffer.has(Material.PLACING_LABOR.of(""));
  }

  /** Returns the pour plan of a job. */
  static Part of(Job job, OnOffer onOffer) {
    PourTakeoff takeoff = new PourTakeoff(job, onOffer);
    for (Pour pour : job.pours()) {
      List<Section> sections =
          job.sections().stream().filter(section -> section.pour() == pour.number()).toList();
      if (!sections.isEmpty()) {
        takeoff.pour(pour, sections);
      }
    }
    return takeoff.part;
  }

  private void pour(Pour pour, List<Section> sections) {
    double rate = PlacingTime.rateM3PerHour(placingRate(pour), pour.crew());
    double placedM3 = 0;
    for (Section section : sections) {
      double netM3 = SectionConcrete.of(job, section).stream().mapToDouble(Poured::m3).sum();
      if (section.kind().isFloor()) {
        strips(pour, section, netM3, placedM3, rate);
      }
      placedM3 += netM3;
    }
    if (pour.placing() == Placing.PUMP) {
      part.add(pump(pour));
    }
    if (laborPriced) {
      part.add(labor(pour, placedM3, rate));
    }
  }

  private double placingRate(Pour pour) {
    Setting rate =
        switch (pour.placing()) {
          case CHUTE -> Setting.PLACING_RATE_CHUTE;
          case PUMP -> Setting.PLACING_RATE_PUMP;
          case BARROW -> Setting.PLACING_RATE_BARROW;
        };
    return job.practice().number(rate);
  }

  /** Adds the strips of a section, each with its share of the concrete by its plan area. */
  private void strips(Pour pour, Section section, double netM3, double beforeM3, double rate) {
    Length x = extent(section, true);
    Length y = extent(section, false);
    boolean alongX = !x.isLessThan(y);
    int strips = PlacingTime.strips(x.min(y), job.practice().length(Setting.STRIP_WIDTH));
    List<Band> bands = FloorPlan.bands(Floors.plan(job, section), alongX, strips);
    double areaM2 = bands.stream().mapToDouble(Band::areaM2).sum();
    int times = job.timesOf(section);
    double placedM3 = beforeM3;
    for (int i = 0; i < strips * times; i++) {
      Band band = bands.get(i % strips);
      double volumeM3 = netM3 / times * band.areaM2() / areaM2;
      double minutes = PlacingTime.minutes(placedM3, rate);
      part.add(
          new Strip(
              section.code(),
              pour.number(),
              i + 1,
              x.min(y).dividedBy(strips),
              Length.ofMetres(band.lengthM()),
              volumeM3,
              pour.start().plusMinutes(Math.round(minutes))));
      placedM3 += volumeM3;
    }
  }

  private static Length extent(Section section, boolean alongX) {
    if (section.shape() instanceof Shape.Rectangle rectangle) {
      return alongX ? rectangle.length() : rectangle.width();
    }
    Figure figure = Figures.of(section);
    return Length.ofMetres(alongX ? figure.extentXM() : figure.extentYM());
  }

  private static Quantity pump(Pour pour) {
    return Quantity.of(
        "",
        "pump",
        1,
        Unit.EACH,
        "pour " + pour.number() + " = 1",
        "POUR-2",
        Material.PUMP.of(""),
        pour.number());
  }

  private Quantity labor(Pour pour, double placedM3, double rate) {
    double hours = PlacingTime.minutes(placedM3, rate) / 60 * pour.crew();
    return Quantity.of(
        "",
        "placing labor",
        hours,
        Unit.HOUR,
        working.volume(placedM3)
            + " ÷ "
            + working.volume(rate)
            + "/hour × "
            + pour.crew()
            + " people = "
            + working.amount(hours, Unit.HOUR),
        "POUR-2",
        Material.PLACING_LABOR.of(""),
        pour.number());
  }
}
