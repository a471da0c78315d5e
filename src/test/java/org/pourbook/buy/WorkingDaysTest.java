package org.pourbook.buy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;

class WorkingDaysTest {

  private static String before(String day, int days) {
    return WorkingDays.before(LocalDate.parse(day), days).toString();
  }

  @Test
  void weekEndsAreNotCounted() {
    // 2027-04-13 is a Tuesday.
    assertEquals("2027-04-12", before("2027-04-13", 1));
    assertEquals("2027-04-09", before("2027-04-13", 2));
    assertEquals("2027-04-06", before("2027-04-13", 5));
  }

  @Test
  void noDaysBeforeASaturdayIsThatSaturdayAndOneIsFriday() {
    assertEquals("2027-04-17", before("2027-04-17", 0));
    assertEquals("2027-04-16", before("2027-04-17", 1));
  }
}
