package org.pourbook.takeoff.rule;

import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.problem.Standing;
import org.pourbook.takeoff.Source;

/**
 * BAR-2: development lengths and class B laps of deformed bars in tension, uncoated, in
 * normal-weight concrete (ψe = λ = 1), with the clear spacing and cover of the first row of ACI
 * 318-19 Table 25.4.2.3, which slab bars have.
 */
public final class DevelopmentLengths {

  /** Pounds a square inch in a megapascal. */
  public static final double PSI_PER_MPA = 145.0377;

  /** √f′c is taken as no more than this [psi]. */
  private static final double GREATEST_ROOT = 100;

  private static final double LEAST_LAP_IN = 12;
  private static final Pattern PSI = Pattern.compile("(\\d[\\d,]*(?:\\.\\d+)?)\\s*psi");
  private static final Pattern MPA = Pattern.compile("(\\d+(?:\\.\\d+)?)\\s*mpa");
  private static final Pattern NUMBER = Pattern.compile("\\d[\\d,]*(?:\\.\\d+)?");

  private DevelopmentLengths() {}

  /**
   * Returns the strength that a mix is named after, in psi: {@code 3000 psi}, {@code 25 MPa}, or a
   * bare number of 1000 and more; empty where the name holds none.
   */
  @Source(
      rule = "BAR-2",
      says = "The strength of concrete is the number in the name of its mix.",
      value = "1 MPa = 145.0377 psi",
      standing = Standing.COMMON_PRACTICE)
  public static OptionalDouble strengthPsi(String mix) {
    String text = mix.toLowerCase(Locale.ROOT);
    Matcher psi = PSI.matcher(text);
    if (psi.find()) {
      return OptionalDouble.of(number(psi.group(1)));
    }
    Matcher mpa = MPA.matcher(text);
    if (mpa.find()) {
      return OptionalDouble.of(number(mpa.group(1)) * PSI_PER_MPA);
    }
    return NUMBER
        .matcher(text)
        .results()
        .mapToDouble(found -> number(found.group()))
        .filter(value -> value >= 1000)
        .findFirst();
  }

  private static double number(String digits) {
    return Double.parseDouble(digits.replace(",", ""));
  }

  /**
   * Returns the yield strength of a bar grade in psi: ksi up to 199 ({@code 60}), above that MPa
   * ({@code 420}).
   */
  @Source(
      rule = "BAR-2",
      says = "A bar grade is its yield strength in ksi, or in MPa from 200 up.",
      value = "60 = 60,000 psi",
      standing = Standing.COMMON_PRACTICE)
  public static double yieldPsi(double grade) {
    return grade < 200 ? grade * 1000 : grade * PSI_PER_MPA;
  }

  /**
   * Returns ψg, for the grade: 1.0 to grade 60 (420 MPa), 1.15 to grade 80 (550 MPa), 1.3 above.
   */
  @Source(
      rule = "BAR-2",
      says = "Grade factor ψg of the development length.",
      value = "1.0 grade 60, 1.15 grade 80, 1.3 grade 100",
      key = "aci-318-19",
      at = "Table 25.4.2.5",
      standing = Standing.PUBLISHED)
  public static double gradeFactor(double yieldPsi) {
    if (yieldPsi <= 420 * PSI_PER_MPA) {
      return 1.0;
    }
    return yieldPsi <= 80_000 ? 1.15 : 1.3;
  }

  /** Returns ψt, for the place: 1.3 above more than 12 in of fresh concrete, else 1.0. */
  @Source(
      rule = "BAR-2",
      says = "Place factor ψt of the development length: bars over deep fresh concrete.",
      value = "1.3 over more than 12 in, else 1.0",
      key = "aci-318-19",
      at = "Table 25.4.2.5",
      standing = Standing.PUBLISHED)
  public static double placeFactor(Length concreteBelow) {
    return concreteBelow.isMoreThan(Length.ofInches(12)) ? 1.3 : 1.0;
  }

  /**
   * Returns the development length {@code ld = fy·ψt·ψg/(25·√f′c)·db} of #6 and smaller, with 20 in
   * place of 25 for larger bars; unrounded and without the least length of 12 in [in].
   *
   * @param factors ψt·ψg
   */
  @Source(
      rule = "BAR-2",
      says = "Development length, #6 and smaller: ld = fy·ψt·ψe·ψg/(25·λ·√f′c)·db.",
      value = "25; √f′c at most 100 psi",
      key = "aci-318-19",
      at = "Table 25.4.2.3",
      standing = Standing.PUBLISHED)
  @Source(
      rule = "BAR-2",
      says = "Development length, #7 and larger: ld = fy·ψt·ψe·ψg/(20·λ·√f′c)·db.",
      value = "20",
      key = "aci-318-19",
      at = "Table 25.4.2.3",
      standing = Standing.FROM_MEMORY)
  public static double developmentIn(
      BarSize bar, double yieldPsi, double strengthPsi, double factors) {
    double root = Math.min(GREATEST_ROOT, Math.sqrt(strengthPsi));
    double divisor = bar.isSmall() ? 25 : 20;
    return yieldPsi * factors / (divisor * root) * bar.diameter().inches();
  }

  /** Returns the class B lap of a development length: 1.3·ld, at least 12 in; unrounded [in]. */
  @Source(
      rule = "BAR-2",
      says = "Class B lap: 1.3 times the development length, at least 12 in.",
      value = "1.3; 12 in",
      key = "aci-318-19",
      at = "25.5.2.1",
      standing = Standing.FROM_MEMORY)
  public static double classBLapIn(double developmentIn) {
    return Math.max(LEAST_LAP_IN, 1.3 * developmentIn);
  }
}
