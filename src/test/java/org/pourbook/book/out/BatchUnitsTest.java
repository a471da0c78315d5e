package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;

class BatchUnitsTest {

  @Test
  void quartersOfAYardComeBackAsSuch() {
    for (int quarters = 1; quarters < 200; quarters++) {
      double m3 = Unit.YD3.toBase(quarters / 4.0);
      assertEquals(quarters / 4.0, BatchUnits.loaded(m3, UnitSystem.FT_IN));
      // what is left of a truckload of 10 yd3, as loads are worked out
      double left = Unit.YD3.toBase(10 + quarters / 4.0) - Unit.YD3.toBase(10);
      assertEquals(quarters / 4.0, BatchUnits.loaded(left, UnitSystem.FT_IN));
    }
    assertEquals(7.35, BatchUnits.loaded(7.35, UnitSystem.M));
  }
}
