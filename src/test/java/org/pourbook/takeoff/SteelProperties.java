package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.pourbook.job.JointKind;
import org.pourbook.job.Kind;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;
import org.pourbook.takeoff.SteelFixture.SectionBuilder;

class SteelProperties {

  private static final long SEED = 20_260_401;
  private static final int CASES = 300;
  private static final String[] BARS = {"#3", "#4", "#5", "#6", "10M", "12 mm"};

  @Test
  void piecesAndMarksAddUpToTheQuantityOfEachBar() {
    for (int i = 0; i < CASES; i++) {
      Part part = random(i, UnitSystem.FT_IN).takeOff();
      Map<String, Double> pieces = new TreeMap<>();
      part.pieces()
          .forEach(
              p -> pieces.merge(p.material().size(), p.length().feet() * p.count(), Double::sum));
      Map<String, Double> marks = new TreeMap<>();
      part.barMarks()
          .forEach(
              m ->
                  marks.merge(
                      m.size().designation(), m.cutLength().feet() * m.count(), Double::sum));
      Map<String, Double> quantities = new TreeMap<>();
      part.quantities().stream()
          .filter(q -> q.material().map(key -> key.material().equals("bar")).orElse(false))
          .forEach(
              q -> quantities.merge(q.material().orElseThrow().size(), q.amount(), Double::sum));
      assertEqual(quantities, pieces, i);
      assertEqual(quantities, marks, i);
    }
  }

  @Test
  void noPieceIsLongerThanTheLongestBarOnOffer() {
    for (int i = 0; i < CASES; i++) {
      SteelFixture job = random(i, UnitSystem.FT_IN);
      int seedCase = i;
      job.takeOff()
          .pieces()
          .forEach(
              piece ->
                  assertEquals(
                      piece.length(), piece.length().min(Length.ofFeet(20)), () -> seed(seedCase)));
    }
  }

  @Test
  void aJobInMetresAndTheSameInFeetTakeTheSameSteel() {
    for (int i = 0; i < CASES; i++) {
      assertEqual(
          inBaseUnits(random(i, UnitSystem.FT_IN).takeOff()),
          inBaseUnits(random(i, UnitSystem.M).takeOff()),
          i);
    }
  }

  private static Map<String, Double> inBaseUnits(Part part) {
    Map<String, Double> amounts = new TreeMap<>();
    for (Quantity quantity : part.quantities()) {
      Unit unit = quantity.unit();
      amounts.merge(
          quantity.section() + " " + quantity.what(), unit.toBase(quantity.amount()), Double::sum);
    }
    return amounts;
  }

  private static void assertEqual(Map<String, Double> expected, Map<String, Double> got, int i) {
    assertEquals(expected.keySet(), got.keySet(), () -> seed(i));
    expected.forEach(
        (key, amount) ->
            assertEquals(amount, got.getOrDefault(key, Double.NaN), 1e-9 * amount, seed(i)));
  }

  /** A floor with a recess, an edge, a round slab, a pier and joints, all by chance. */
  private static SteelFixture random(int i, UnitSystem units) {
    SplittableRandom random = new SplittableRandom(SEED + i);
    SteelFixture job = new SteelFixture();
    job.units = units;
    for (String bar : BARS) {
      job.stock.put(bar, Length.ofFeet(20));
    }
    SectionBuilder floor =
        job.slab("F1", length(random, 10, 80), length(random, 10, 60), Length.ofInches(6))
            .bars(bar(random), Length.ofInches(random.nextInt(9, 25)))
            .edge(
                random.nextBoolean() ? Sides.ALL : Sides.ofRun(length(random, 4, 50)),
                SteelFixture.run(random.nextInt(1, 4), bar(random)));
    floor.count = random.nextInt(1, 4);
    SectionBuilder recess =
        job.slab("R1", length(random, 3, 6), length(random, 3, 6), Length.ofInches(6))
            .recessIn("F1", Length.ofInches(random.nextInt(1, 10)));
    if (random.nextBoolean()) {
      recess.at(length(random, 1, 4), length(random, 1, 4)).bars("#4", Length.ofInches(12));
    }
    SectionBuilder round =
        job.slab("C1", Length.ofFeet(1), Length.ofFeet(1), Length.ofInches(5))
            .bars(bar(random), Length.ofInches(random.nextInt(9, 25)));
    round.shape = new Shape.Round(length(random, 5, 60));
    SectionBuilder pier = job.slab("P1", Length.ofFeet(1), Length.ofFeet(1), length(random, 2, 10));
    pier.kind = Kind.PIER;
    pier.edgeBars = Optional.of(SteelFixture.run(4, "#4"));
    JointKind kind = JointKind.values()[random.nextInt(3)];
    job.joint(SteelFixture.joint(kind, "F1", length(random, 4, 40)));
    return job;
  }

  private static Length length(SplittableRandom random, int fromFeet, int toFeet) {
    return Length.ofInches(random.nextInt(fromFeet * 192, toFeet * 192), 16);
  }

  private static String bar(SplittableRandom random) {
    return BARS[random.nextInt(BARS.length)];
  }

  private static String seed(int i) {
    return "seed " + (SEED + i);
  }
}
