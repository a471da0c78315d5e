package org.pourbook.buy;

import java.time.DayOfWeek;
import java.time.LocalDate;

/** Days on which suppliers deliver: Monday to Friday (BUY-5). Holidays are not known. */
final class WorkingDays {

  private WorkingDays() {}

  /** Returns the day so many working days before another; 0 is that day, whatever it is. */
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
