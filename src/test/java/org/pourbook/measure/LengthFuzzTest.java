package org.pourbook.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Lengths of any letters: read or not, and what is read is a length that can be written. */
class LengthFuzzTest {

  @FuzzTest(maxDuration = "2m")
  void read(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    for (Unit bare : new Unit[] {Unit.FT, Unit.IN, Unit.M, Unit.MM}) {
      Optional<Length> length = LengthText.read(text, bare);
      assertEquals(length, LengthText.read(" " + text + " ", bare), "spaces round it");
      length.ifPresent(
          read ->
              assertEquals(
                  length,
                  LengthText.read(
                      BigDecimal.valueOf(read.nanometres(), 6).toPlainString() + " mm", bare)));
    }
  }
}
