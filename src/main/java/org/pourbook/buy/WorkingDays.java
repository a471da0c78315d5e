package org.pourbook.buy;

import static org.pourbook.problem.Standing.COMMON_PRACTICE;

import java.time.DayOfWeek;
import java.time.LocalDate;
import org.pourbook.takeoff.Source;

/** Days on which suppliers deliver: Monday to Friday (BUY-5). Holidays are not known. */
final class WorkingDays {

  private WorkingDays() {}

  /** Returns the day so many working days before another; 0 is that day, whatever it is. */
  @Source(
      rule = "BUY-5",
      says =
          "Needed by is the pour date less Ahead of pour, order by is that less the lead days, in"
              + " working days, Monday to Friday",
      value =
          "base, boards, stakes 5; retarder, bars, mesh, supports 3; bolts and the rest 2; curing,"
              + " sealant 1; concrete, pump 0",
      standing = COMMON_PRACTICE)
  static LocalDate before(LocalDate day, int workingDays) {
    LocalDate date = day;
    for (int left = workingDays; left > 0; ) {
      date = date.minusDays(1);
      if (date.getDayOfWeek() != DayOfWeek.SATURDAY && date.getDayOfWeek() != DayOfWeek.SUNDAY) {
        left--;
      }
    }
    return date;
  }
}
