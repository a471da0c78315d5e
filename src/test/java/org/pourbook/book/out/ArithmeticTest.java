package org.pourbook.book.out;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.Worked;

class ArithmeticTest {

  private static final Worked LENGTH = new Worked.Other("S", "length", Unit.FT.toBase(40));
  private static final Worked WIDTH = new Worked.Other("S", "width", Unit.FT.toBase(26));
  private static final Worked THICK = new Worked.Other("S", "thick", Unit.IN.toBase(5));

  private static final Map<Worked, Arithmetic.Cell> CELLS =
      Map.of(
          LENGTH, new Arithmetic.Cell("A1", Unit.FT.toBase(1)),
          WIDTH, new Arithmetic.Cell("B1", Unit.FT.toBase(1)),
          THICK, new Arithmetic.Cell("C1", Unit.IN.toBase(1)));

  private static final Arithmetic ARITHMETIC =
      new Arithmetic(worked -> Optional.ofNullable(CELLS.get(worked)));

  @Test
  void feetTimesFeetTimesInchesAreCubicYardsThroughThreeHundredAndTwentyFour() {
    Worked volume = LENGTH.times(WIDTH).times(THICK);
    assertEquals(Optional.of("A1*B1*C1/324"), ARITHMETIC.formula(volume, Unit.YD3));
    assertEquals(40 * 26 * 5 / 324.0, Unit.YD3.fromBase(volume.value()), 1e-12);
  }

  @Test
  void sumsOfUnlikeUnitsAreWrittenInTheFirstOnesUnit() {
    Worked side = LENGTH.plus(THICK.times(2));
    assertEquals(Optional.of("A1+C1/6"), ARITHMETIC.formula(side, Unit.FT));
    assertEquals(Optional.of("(A1+C1/6)*B1"), ARITHMETIC.formula(side.times(WIDTH), Unit.FT2));
    assertEquals(
        Optional.of("A1*B1-B1^2"),
        ARITHMETIC.formula(LENGTH.times(WIDTH).minus(WIDTH.times(WIDTH)), Unit.FT2));
  }

  @Test
  void whatRestsOnALayoutHasNoFormula() {
    Worked laid = LENGTH.times(new Worked.Laid(3));
    assertEquals(Optional.empty(), ARITHMETIC.formula(laid, Unit.FT2));
    assertEquals(Optional.empty(), ARITHMETIC.formula(Worked.of(3), Unit.FT2));
  }
}
