package org.pourbook.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;

/** Bars of any letters: read or not; what is read has a count, known sizes and sound spacings. */
class BarFuzzTest {

  private static final Length CLOSEST = Length.ofInches(1);

  @FuzzTest(maxDuration = "2m")
  void read(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    for (Unit bare : new Unit[] {Unit.IN, Unit.MM}) {
      BarText.mat(text, bare)
          .ifPresent(
              mat -> {
                assertFalse(mat.alongSpacing().isLessThan(CLOSEST));
                assertFalse(mat.acrossSpacing().isLessThan(CLOSEST));
                known(mat.along());
                known(mat.across());
              });
    }
    BarText.run(text)
        .ifPresent(
            run -> {
              assertTrue(run.count() > 0);
              known(run.size());
            });
  }

  private static void known(BarSize size) {
    assertEquals(size, BarSize.named(size.designation()).orElseThrow());
  }
}
