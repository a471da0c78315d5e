package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.bare;
import static org.pourbook.takeoff.SiteJob.SectionBuilder.slab;
import static org.pourbook.takeoff.SiteJob.feet;

import java.time.LocalTime;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Placing;
import org.pourbook.job.Shape;
import org.pourbook.job.Weather;
import org.pourbook.measure.Unit;

class PourTakeoffTest {

  private static final double ROUNDING = 1e-9;

  @Test
  void stripsAreEqualAndAddUpToTheSection() {
    Job job = new SiteJob().with(slab("A").size(feet(30), feet(81)).thick("6")).build();

    List<Strip> strips = PourTakeoff.of(job, Offer.NOTHING).strips();

    // 30 ft across at 10 ft: 3 strips of 10 ft x 81 ft; 45 yd3, 15 each: at 15 yd3/h one an hour
    assertEquals(3, strips.size());
    assertEquals(feet(10), strips.get(0).width());
    assertEquals(feet(81), strips.get(0).length());
    assertEquals(
        45, Unit.YD3.fromBase(strips.stream().mapToDouble(Strip::volumeM3).sum()), ROUNDING);
    assertEquals(
        List.of(LocalTime.of(7, 0), LocalTime.of(8, 0), LocalTime.of(9, 0)),
        strips.stream().map(Strip::start).toList());
  }

  @Test
  void eachOfACountHasItsOwnStrips() {
    Job job = new SiteJob().with(slab("A").count(2)).build();

    List<Strip> strips = PourTakeoff.of(job, Offer.NOTHING).strips();

    // 24 ft across: 3 strips of 8 ft, twice
    assertEquals(6, strips.size());
    assertEquals(6, strips.get(5).strip());
    assertEquals(feet(8), strips.get(5).width());
  }

  @Test
  void stripsOfAnOutlineAreAsLongAsTheOutlineInThem() {
    // 36 x 20 ft less 12 x 10 at the upper right: two strips of 10 ft, 36 and 24 ft long. 6 in
    // thick: 600 ft2 / 54 = 11.11 yd3, as 360 to 240 ft2.
    Job job =
        new SiteJob()
            .with(
                slab("A")
                    .shape(Plan.outline(Plan.ring(0, 0, 36, 0, 36, 10, 24, 10, 24, 20, 0, 20)))
                    .thick("6"))
            .build();

    List<Strip> strips = PourTakeoff.of(job, Offer.NOTHING).strips();

    assertEquals(List.of(feet(36), feet(24)), strips.stream().map(Strip::length).toList());
    assertEquals(List.of(feet(10), feet(10)), strips.stream().map(Strip::width).toList());
    assertEquals(360 / 54.0, Unit.YD3.fromBase(strips.get(0).volumeM3()), ROUNDING);
    assertEquals(240 / 54.0, Unit.YD3.fromBase(strips.get(1).volumeM3()), ROUNDING);
    // 6.667 yd3 at 15 yd3/h: 26.67 min
    assertEquals(LocalTime.of(7, 27), strips.get(1).start());
  }

  @Test
  void stripsOfARoundFloorAndAroundARecessAddUpToTheirSections() {
    Job job =
        new SiteJob()
            .with(slab("A").shape(new Shape.Round(feet(27))))
            .with(slab("B"))
            .with(
                SiteJob.SectionBuilder.recess("R", "B", SiteJob.inches("2"))
                    .size(feet(8), feet(8))
                    .at(feet(0), feet(0)))
            .build();

    List<Strip> strips = PourTakeoff.of(job, Offer.NOTHING).strips();

    for (String code : List.of("A", "B", "R")) {
      double net =
          SectionConcrete.of(job, job.section(code)).stream().mapToDouble(Poured::m3).sum();
      double sum =
          strips.stream()
              .filter(strip -> strip.section().equals(code))
              .mapToDouble(Strip::volumeM3)
              .sum();
      assertEquals(net, sum, net * ROUNDING, code);
    }
    // B: 36 x 24 ft in three strips of 8 ft; 8 x 8 ft of the first is the recess
    List<Strip> around = strips.stream().filter(strip -> strip.section().equals("B")).toList();
    assertEquals(28 / 36.0, around.get(0).volumeM3() / around.get(1).volumeM3(), ROUNDING);
    assertEquals(feet(28), around.get(0).length());
  }

  @Test
  void onlyAPumpedPourTakesAPump() {
    Job job =
        new SiteJob()
            .with(SiteJob.pour(1, Placing.PUMP))
            .with(SiteJob.pour(2, Placing.CHUTE))
            .with(SiteJob.pour(3, Placing.PUMP))
            .with(slab("A"))
            .with(slab("B").pour(2))
            .build();

    // Pour 3 holds nothing
    List<Quantity> rows = PourTakeoff.of(job, Offer.NOTHING).quantities();
    assertEquals(1, rows.size());
    assertEquals("pump", rows.get(0).material().orElseThrow().material());
    assertEquals(1, rows.get(0).amount());
  }

  @Test
  void laborIsAskedForOnlyWhereItIsPriced() {
    Job job = new SiteJob().with(slab("A").size(feet(30), feet(81)).thick("6")).build();
    Offer priced = Offer.of(Material.PLACING_LABOR.of(""), Material.FINISHING_LABOR.of(""));

    // 45 yd3 at 15 yd3/h is 3 h x 5 people; 2,430 ft2 at 100 ft2/h
    assertTrue(PourTakeoff.of(job, Offer.NOTHING).quantities().isEmpty());
    assertEquals(15, PourTakeoff.of(job, priced).quantities().get(0).amount(), ROUNDING);
    assertEquals(24.3, row(FloorTakeoff.of(job, priced), "finishing labor"), ROUNDING);
  }

  @Test
  void floorsAreFinishedAndCuredByTheirOwnArea() {
    Job job =
        new SiteJob()
            .with(slab("A"))
            .with(
                SiteJob.SectionBuilder.recess("R", "A", SiteJob.inches("2")).size(feet(8), feet(8)))
            .build();
    Part floors = FloorTakeoff.of(job, Offer.NOTHING);

    // 864 - 64 = 800 ft2; 800 / 200 = 4 gal
    assertEquals(800, row(floors, "plan area"), ROUNDING);
    assertEquals(800, row(floors, "trowel finish"), ROUNDING);
    assertEquals(4, row(floors, "curing compound"), ROUNDING);
    assertEquals("800 ft2 ÷ 200 ft2/gal = 4 gal", floors.quantities().get(2).working());
  }

  @Test
  void aSixtyFootFootingGetsNoBaseJointsOrFinish() {
    Job job =
        new SiteJob().with(bare("F", Kind.FOOTING).size(feet(60), feet(2)).thick("12")).build();

    TakeOff takeOff = TakeOffs.of(job, Offer.NOTHING);

    assertTrue(takeOff.joints().isEmpty());
    assertTrue(takeOff.strips().isEmpty());
    assertEquals(
        List.of("footing", "digging, footing, bank", "digging, footing, loose"),
        takeOff.quantities().stream().map(Quantity::what).toList());
  }

  @Test
  void dryingIsToldFromTheLimitAndSoonerWithFiber() {
    Weather dry = weather(70, 50, 10, 70, 0);

    // 70/70 °F, 50 %, 10 mph gives 0.102 lb/ft2/h: between the limits of 0.1 and 0.2
    assertTrue(cautions(new SiteJob().with(slab("A")), dry).isEmpty());
    List<Caution> fiber = cautions(new SiteJob().with(slab("A").fiber(0.9)), dry);
    assertEquals(1, fiber.size());
    assertTrue(fiber.get(0).says().contains("about 0.10 lb/ft2/h"), fiber.get(0).says());
  }

  @Test
  void coldHotAndRainAreTold() {
    List<Caution> cautions =
        cautions(new SiteJob().with(slab("A")), weather(39.9, 100, 0, 95.1, 40));

    assertEquals(3, cautions.size());
    assertTrue(cautions.get(0).says().contains("39.90 °F"));
    assertTrue(cautions.get(1).says().contains("95.10 °F"));
    assertTrue(cautions.get(2).says().contains("rain chance 40 %"));
    assertTrue(cautions(new SiteJob().with(slab("A")), weather(40, 100, 0, 95, 39)).isEmpty());
  }

  private static List<Caution> cautions(SiteJob job, Weather weather) {
    return WeatherCautions.of(job.with(SiteJob.pour(1, Placing.CHUTE, weather)).build()).cautions();
  }

  private static Weather weather(
      double air, double humidity, double wind, double concrete, double rain) {
    return new Weather(
        OptionalDouble.of(air),
        OptionalDouble.of(humidity),
        OptionalDouble.of(wind),
        OptionalDouble.of(concrete),
        OptionalDouble.of(rain));
  }

  private static double row(Part part, String what) {
    return part.quantities().stream()
        .filter(quantity -> quantity.what().equals(what))
        .findFirst()
        .orElseThrow()
        .amount();
  }
}
