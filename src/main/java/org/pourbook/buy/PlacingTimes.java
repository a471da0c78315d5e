package org.pourbook.buy;

import static org.pourbook.problem.Standing.FROM_MEMORY;

import org.pourbook.job.Pour;
import org.pourbook.job.Practice;
import org.pourbook.job.Setting;
import org.pourbook.takeoff.Source;
import org.pourbook.takeoff.rule.PlacingTime;

/**
 * How fast a pour takes concrete, and how old that is when it leaves the truck.
 *
 * @param m3PerHour placed by the crew
 * @param minutesAway from batching to arrival
 * @param limitMinutes from batching to the end of discharge
 */
record PlacingTimes(double m3PerHour, double minutesAway, double limitMinutes) {

  /** Returns the times of a pour with a supplier; the rate is in proportion to the crew. */
  static PlacingTimes of(Portion portion, Supplier supplier) {
    Practice practice = portion.job().practice();
    Pour pour = portion.job().pour(portion.pour());
    Setting rate =
        switch (pour.placing()) {
          case CHUTE -> Setting.PLACING_RATE_CHUTE;
          case PUMP -> Setting.PLACING_RATE_PUMP;
          case BARROW -> Setting.PLACING_RATE_BARROW;
        };
    return new PlacingTimes(
        PlacingTime.rateM3PerHour(practice.number(rate), pour.crew()),
        ConcreteOptions.or(supplier.minutesAway(), practice, Setting.MINUTES_AWAY),
        practice.number(Setting.DISCHARGE_LIMIT));
  }

  double minutesFor(double volumeM3) {
    return PlacingTime.minutes(volumeM3, m3PerHour);
  }

  /**
   * Returns the most that can be discharged in time; without end where the truck comes too late.
   */
  @Source(
      rule = "CON-8",
      says = "With slow placing a load is no larger than can be discharged within the limit",
      value = "90 min from batching",
      standing = FROM_MEMORY)
  double largestLoadM3() {
    double left = limitMinutes - minutesAway;
    return left > 0 ? left / 60 * m3PerHour : Double.MAX_VALUE;
  }

  /** Returns the minutes from batching to the end of discharge of a load. */
  double ageMinutes(double volumeM3) {
    return minutesAway + minutesFor(volumeM3);
  }
}
