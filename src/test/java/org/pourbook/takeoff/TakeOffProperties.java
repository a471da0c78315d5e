package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.pourbook.job.Job;
import org.pourbook.job.Kind;
import org.pourbook.job.Setting;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;
import org.pourbook.takeoff.SiteJob.SectionBuilder;

/** What holds for any job, tried on random ones. */
class TakeOffProperties {

  private static final long SEED = 20260301L;
  private static final int TRIES = 200;

  /** Agreement asked of the two statements of one job. */
  private static final double AGREE = 1e-9;

  /**
   * Boards sold to both jobs alike: with none on offer, one would take 38.1 mm boards up to 16 ft
   * and the other 38 mm ones up to 4.8 m, which are other boards and not another statement.
   */
  private static final Offer SAME_BOARDS =
      Offer.of(
              Material.FORM_BOARD.of("2x4"),
              Material.FORM_BOARD.of("2x6"),
              Material.FORM_BOARD.of("2x8"),
              Material.FORM_BOARD.of("2x10"),
              Material.FORM_BOARD.of("2x12"))
          .upTo(Length.ofFeet(16));

  /** By default a job in feet cuts to 1/16 in and one in metres to 1 mm (CUT-1). */
  private static SiteJob sameStep(SiteJob job) {
    return job.with(Setting.CUT_STEP, "0.0625");
  }

  @Test
  void metricAndImperialStatementsOfOneJobAgree() {
    for (int i = 0; i < TRIES; i++) {
      List<SectionBuilder> sections = sections(new SplittableRandom(SEED + i));
      Map<String, Double> imperial =
          inBaseUnits(TakeOffs.of(job(sameStep(new SiteJob()), sections), SAME_BOARDS));
      Map<String, Double> metric =
          inBaseUnits(TakeOffs.of(job(sameStep(new SiteJob().metric()), sections), SAME_BOARDS));
      assertClose(imperial, metric, "seed " + (SEED + i));
    }
  }

  @Test
  void theOrderOfSectionsDoesNotMatter() {
    for (int i = 0; i < TRIES; i++) {
      SplittableRandom random = new SplittableRandom(SEED + i);
      List<SectionBuilder> sections = sections(random);
      List<SectionBuilder> turned = new ArrayList<>(sections);
      Collections.reverse(turned);
      assertClose(
          inBaseUnits(TakeOffs.of(job(sections), Offer.NOTHING)),
          inBaseUnits(TakeOffs.of(job(turned), Offer.NOTHING)),
          "seed " + (SEED + i));
    }
  }

  @Test
  void anEdgedSlabHoldsMoreThanThePlainOneAndNoMoreThanTheBlock() {
    for (int i = 0; i < TRIES; i++) {
      SplittableRandom random = new SplittableRandom(SEED + i);
      Length length = sixteenths(random, 24, 1000);
      Length width = sixteenths(random, 24, 1000);
      List<String> sides =
          List.of("L1", "L2", "W1", "W2").stream().filter(side -> random.nextBoolean()).toList();
      Job job =
          job(
              List.of(
                  SectionBuilder.slab("A").size(length, width).edge("16", "10", Sides.of(sides))));
      double net =
          ConcreteTakeoff.of(job).concrete().stream().mapToDouble(ConcreteNeed::planM3).sum();
      double plan = length.metres() * width.metres();
      String seed = "seed " + (SEED + i);
      assertTrue(net >= plan * Length.ofInches(4).metres() * (1 - AGREE), seed);
      assertTrue(net <= plan * Length.ofInches(16).metres() * (1 + AGREE), seed);
    }
  }

  @Test
  void aSectionCountedIsThatManySections() {
    for (int i = 0; i < TRIES; i++) {
      SplittableRandom random = new SplittableRandom(SEED + i);
      Length length = sixteenths(random, 24, 1000);
      Length width = sixteenths(random, 24, 1000);
      int count = random.nextInt(1, 6);
      List<SectionBuilder> apart = new ArrayList<>();
      for (int k = 0; k < count; k++) {
        apart.add(SectionBuilder.slab("A" + k).size(length, width).edge("12", "9", Sides.ALL));
      }
      SectionBuilder counted =
          SectionBuilder.slab("A").size(length, width).edge("12", "9", Sides.ALL).count(count);
      // Retarder rolls are used up through all of a count, so they are compared by their rule.
      assertClose(
          without(byKey(TakeOffs.of(job(apart), Offer.NOTHING)), "vapor retarder", "seam tape"),
          without(
              byKey(TakeOffs.of(job(List.of(counted)), Offer.NOTHING)),
              "vapor retarder",
              "seam tape"),
          "seed " + (SEED + i));
    }
  }

  private static Map<String, Double> without(Map<String, Double> amounts, String... materials) {
    Map<String, Double> rest = new TreeMap<>(amounts);
    rest.keySet().removeIf(key -> List.of(materials).stream().anyMatch(key::startsWith));
    return rest;
  }

  private static Job job(List<SectionBuilder> sections) {
    return job(new SiteJob(), sections);
  }

  private static Job job(SiteJob job, List<SectionBuilder> sections) {
    sections.forEach(job::with);
    return job.build();
  }

  private static List<SectionBuilder> sections(SplittableRandom random) {
    SectionBuilder slab =
        SectionBuilder.slab("A")
            .size(sixteenths(random, 60, 1000), sixteenths(random, 60, 1000))
            .thick(sixteenths(random, 3, 9))
            .count(random.nextInt(1, 4));
    if (random.nextBoolean()) {
      slab.edge("18", "11", random.nextBoolean() ? Sides.ALL : Sides.of(List.of("L1", "W2")));
    }
    List<SectionBuilder> sections = new ArrayList<>(List.of(slab));
    if (random.nextBoolean()) {
      sections.add(
          SectionBuilder.recess("R", "A", sixteenths(random, 1, 4))
              .size(sixteenths(random, 20, 50), sixteenths(random, 20, 50)));
    }
    if (random.nextBoolean()) {
      sections.add(
          SectionBuilder.thickening("T", "A")
              .size(sixteenths(random, 20, 50), sixteenths(random, 6, 20))
              .thick("14"));
    }
    sections.add(
        SectionBuilder.bare("F", Kind.FOOTING)
            .size(sixteenths(random, 60, 900), sixteenths(random, 12, 40))
            .thick(sixteenths(random, 6, 20)));
    return sections;
  }

  private static Length sixteenths(SplittableRandom random, int leastInches, int mostInches) {
    return Length.ofInches(random.nextInt(leastInches * 16, mostInches * 16), 16);
  }

  /** Amounts of rows alike, in base units; lengths of stock and the like come in either system. */
  private static Map<String, Double> inBaseUnits(TakeOff takeOff) {
    return takeOff.quantities().stream()
        .collect(
            Collectors.groupingBy(
                q -> q.section() + "/" + q.rule() + "/" + q.unit().dimension() + "/" + name(q),
                TreeMap::new,
                Collectors.summingDouble(q -> q.unit().toBase(q.amount()))));
  }

  /** A row's name without sizes in it, which are written in the job's units. */
  private static String name(Quantity quantity) {
    return quantity.what().replaceAll("[0-9].*", "");
  }

  private static Map<String, Double> byKey(TakeOff takeOff) {
    return takeOff.quantities().stream()
        .filter(q -> q.material().isPresent())
        .collect(
            Collectors.groupingBy(
                q -> q.material().orElseThrow().toString(),
                TreeMap::new,
                Collectors.summingDouble(Quantity::amount)));
  }

  private static void assertClose(
      Map<String, Double> expected, Map<String, Double> found, String seed) {
    assertEquals(expected.keySet(), found.keySet(), seed);
    expected.forEach(
        (key, value) ->
            assertEquals(
                value,
                found.getOrDefault(key, Double.NaN),
                AGREE * Math.max(1, Math.abs(value)),
                () -> seed + " " + key));
  }
}
