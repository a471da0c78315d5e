package org.pourbook.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Lengths of any letters: read or not, and what is read is a length that, written, is read as the
 * same again; only a number alone depends on the unit of its column.
 */
class LengthFuzzTest {

  /** Beyond it no slab is: where a length's nanometres run out is no matter here. */
  private static final Length LONGEST = Length.ofFeet(1_000_000);

  private static final Unit[] BARE = {Unit.FT, Unit.IN, Unit.M, Unit.MM};

  @FuzzTest(maxDuration = "1m")
  void read(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    Optional<Length> inFeet = LengthText.read(text, Unit.FT);
    for (Unit bare : BARE) {
      Optional<Length> length = LengthText.read(text, bare);
      assertEquals(length, LengthText.read(" " + text + " ", bare), "spaces round it");
      if (!LengthText.isBare(text)) {
        assertEquals(inFeet, length, "it tells its unit");
      }
      length.ifPresent(read -> isReadAgain(read, bare));
      if (length.isPresent() && length.get().isPositive()) {
        assertEquals(length.map(read -> read.times(-1)), LengthText.read("-" + text.strip(), bare));
      }
    }
    if (LengthText.isBare(text)) {
      LengthText.read(text, Unit.IN).ifPresent(inches -> isTwelveTimes(inFeet, inches));
    }
  }

  private static void isReadAgain(Length length, Unit bare) {
    String millimetres = BigDecimal.valueOf(length.nanometres(), 6).toPlainString();
    assertEquals(Optional.of(length), LengthText.read(millimetres + " mm", bare));
    if (length.isLessThan(LONGEST) && LONGEST.times(-1).isLessThan(length)) {
      isNear(length, LengthFormat.feetInches(length), Length.ofInches(1, 32), bare);
      isNear(length, LengthFormat.inches(length), Length.ofInches(1, 32), bare);
      isNear(length, LengthFormat.metres(length), Length.ofMillimetres(1).dividedBy(2), bare);
    }
  }

  /** What is written for a crew is rounded; what is read of it is off by no more. */
  private static void isNear(Length length, String written, Length by, Unit bare) {
    Length read = LengthText.read(written, bare).orElseThrow(() -> new AssertionError(written));
    long away = Math.abs(read.nanometres() - length.nanometres());
    assertTrue(away <= by.nanometres(), written + " for " + length.nanometres() + " nm");
  }

  /** Up to what rounding to a nanometre leaves of it. */
  private static void isTwelveTimes(Optional<Length> feet, Length inches) {
    feet.ifPresent(
        length ->
            assertTrue(
                Math.abs(length.nanometres() - Math.multiplyExact(12, inches.nanometres())) <= 12,
                length.nanometres() + " nm, not 12 times " + inches.nanometres()));
  }
}
