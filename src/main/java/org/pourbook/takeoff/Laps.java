package org.pourbook.takeoff;

import java.math.BigDecimal;
import java.util.HashSet;
import java.util.OptionalDouble;
import java.util.Set;
import org.pourbook.job.Job;
import org.pourbook.job.Setting;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.takeoff.rule.BarLaps;
import org.pourbook.takeoff.rule.DevelopmentLengths;

/** The laps of a job's bars (BAR-2), with their cautions, each told once. */
final class Laps {

  /** Taken where a mix does not name its strength: the least of the residential code. */
  private static final double LEAST_STRENGTH_PSI = 2500;

  private final Job job;
  private final Part part;
  private final LapRule rule;
  private final double yieldPsi;
  private final Set<String> told = new HashSet<>();

  Laps(Job job, Part part) {
    this.job = job;
    this.part = part;
    String written = job.practice().text(Setting.LAP_RULE);
    this.rule = LapRule.read(written, job.units()).orElseGet(() -> unread(written));
    this.yieldPsi = DevelopmentLengths.yieldPsi(job.practice().number(Setting.BAR_GRADE));
  }

  private LapRule unread(String written) {
    tell("", "Lap rule \"" + written + "\" cannot be read: class B laps taken.", "BAR-2");
    return new LapRule.ClassB();
  }

  /**
   * Returns the lap of a bar, rounded up as a crew measures it.
   *
   * @param concreteBelow fresh concrete under the bar
   */
  Length of(BarSize bar, String mix, Length concreteBelow) {
    Length least = Length.ofInches(classBIn(bar, mix, concreteBelow));
    if (rule instanceof LapRule.Diameters diameters) {
      BigDecimal nm = diameters.number().multiply(BigDecimal.valueOf(bar.diameter().nanometres()));
      return checked(Length.ofMillimetres(nm.movePointLeft(6)), least, bar, mix);
    }
    if (rule instanceof LapRule.Given given) {
      return checked(given.length(), least, bar, mix);
    }
    if (!bar.isSmall()) {
      String says = bar + " laps by the formula for #7 and larger bars (from memory): check them.";
      tell(bar.designation(), says, "BAR-2, ACI 318-19 Table 25.4.2.3");
    }
    return BarLaps.roundedUp(least, bar);
  }

  private double classBIn(BarSize bar, String mix, Length concreteBelow) {
    double factors =
        DevelopmentLengths.placeFactor(concreteBelow) * DevelopmentLengths.gradeFactor(yieldPsi);
    return DevelopmentLengths.classBLapIn(
        DevelopmentLengths.developmentIn(bar, yieldPsi, strengthPsi(mix), factors));
  }

  private double strengthPsi(String mix) {
    double written = job.practice().number(Setting.STRENGTH_PSI);
    if (written > 0) {
      return written;
    }
    OptionalDouble named = DevelopmentLengths.strengthPsi(mix);
    if (named.isEmpty()) {
      String says = "The mix \"" + mix + "\" does not name its strength: laps are for 2500 psi.";
      tell(mix, says, "BAR-2");
    }
    return named.orElse(LEAST_STRENGTH_PSI);
  }

  private Length checked(Length written, Length classB, BarSize bar, String mix) {
    Length lap = BarLaps.roundedUp(written, bar);
    if (lap.isLessThan(classB)) {
      String says =
          bar
              + " laps of "
              + LengthFormat.small(lap, job.units())
              + " by the Lap rule are under the "
              + LengthFormat.small(BarLaps.roundedUp(classB, bar), job.units())
              + " of a class B lap in "
              + mix
              + " (25.5.2.1 from memory).";
      tell(bar + mix, says, "BAR-2, ACI 318-19 25.5.2.1, Table 25.4.2.3");
    }
    return lap;
  }

  private void tell(String about, String says, String reference) {
    if (told.add(reference + about)) {
      part.add(new Caution("", says, reference));
    }
  }
}
