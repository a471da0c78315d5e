package org.pourbook.book.in;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pourbook.job.GivenSheet.GivenCell;

class TicketCellsTest {

  private static GivenCell text(String words) {
    return new GivenCell.Text(words);
  }

  private static Optional<LocalDate> date(String words, String order) {
    return TicketCells.date(text(words), order);
  }

  @Test
  void aDateWithSlashesIsNotGuessed() {
    assertEquals(Optional.empty(), date("4/6/2027", ""));
    assertEquals(Optional.of(LocalDate.of(2027, 4, 6)), date("4/6/2027", "m/d/y"));
    assertEquals(Optional.of(LocalDate.of(2027, 6, 4)), date("4/6/2027", "d/m/y"));
  }

  @Test
  void aDateOfWhichOneNumberIsNoMonthIsPlain() {
    assertEquals(Optional.of(LocalDate.of(2027, 4, 26)), date("4/26/2027", ""));
    assertEquals(Optional.of(LocalDate.of(2027, 4, 26)), date("26/4/2027", ""));
    assertEquals(Optional.empty(), date("26/14/2027", ""));
    assertEquals(Optional.of(LocalDate.of(2027, 4, 6)), date("2027-04-06 07:10", ""));
  }

  @Test
  void aFullTimeIsATimeOfDay() {
    assertEquals(Optional.of(LocalTime.of(7, 5)), TicketCells.time(text("2027-04-06 07:05")));
    assertEquals(Optional.of(LocalTime.of(13, 5)), TicketCells.time(text("4/6/2027 1:05 PM")));
    assertEquals(Optional.of(LocalTime.of(7, 5)), TicketCells.time(text("7:05")));
    assertEquals(Optional.empty(), TicketCells.time(text("soon")));
  }

  @Test
  void waterIsInGallonsUnlessLitresAreSaid() {
    assertEquals(3.785411784, litres("1", ""), 1e-12); // the US gallon of 231 in3
    assertEquals(10, litres("10 L", ""), 1e-12);
    assertEquals(10, litres("10", "L"), 1e-12);
    assertEquals(Optional.empty(), TicketCells.litres(text("1 drum"), ""));
    assertEquals(Optional.empty(), TicketCells.litres(text("-1"), ""));
  }

  private static double litres(String words, String unit) {
    return TicketCells.litres(text(words), unit).orElseThrow().getAsDouble();
  }

  @Test
  void moneyMayCarryItsSignAndBeTakenOff() {
    assertEquals(Optional.of(new BigDecimal("1234.5")), TicketCells.number(text("$1,234.50")));
    assertEquals(Optional.of(new BigDecimal("-45")), TicketCells.number(text("(45.00)")));
    assertEquals(Optional.empty(), TicketCells.number(text("free")));
  }

  @Test
  void feesHaveOurNames() {
    assertEquals("short load", TicketCells.charge("Short-load fee"));
    assertEquals("waiting", TicketCells.charge("Standby"));
    assertEquals("fuel", TicketCells.charge("fuel"));
  }
}
