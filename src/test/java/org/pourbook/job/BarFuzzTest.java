package org.pourbook.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;

/**
 * Bars of any letters: read or not; what is read has a count, known sizes and sound spacings, and
 * is read as the same again when it is written.
 */
class BarFuzzTest {

  private static final Length CLOSEST = Length.ofInches(1);

  @FuzzTest(maxDuration = "1m")
  void read(byte[] bytes) {
    String text = new String(bytes, StandardCharsets.UTF_8);
    for (Unit bare : new Unit[] {Unit.IN, Unit.MM}) {
      Optional<BarMat> read = BarText.mat(text, bare);
      assertTrue(read.isEmpty() || BarText.run(text).isEmpty(), "a mat is no run");
      read.ifPresent(
          mat -> {
            assertFalse(mat.alongSpacing().isLessThan(CLOSEST));
            assertFalse(mat.acrossSpacing().isLessThan(CLOSEST));
            known(mat.along());
            known(mat.across());
            assertEquals(read, BarText.mat(written(mat), bare), "read again");
            int times = text.indexOf('x');
            BarText.mat(
                    text.substring(times + 1) + " x " + text.substring(0, Math.max(times, 0)), bare)
                .filter(other -> times > 0)
                .ifPresent(other -> assertEquals(turned(mat), other, "the other way round"));
          });
    }
    Optional<BarRun> read = BarText.run(text);
    read.ifPresent(
        run -> {
          assertTrue(run.count() > 0);
          known(run.size());
          assertEquals(read, BarText.run(run.count() + " " + run.size().designation()));
        });
  }

  private static BarMat turned(BarMat mat) {
    return new BarMat(mat.across(), mat.acrossSpacing(), mat.along(), mat.alongSpacing());
  }

  private static String written(BarMat mat) {
    return mat.along().designation()
        + " @ "
        + millimetres(mat.alongSpacing())
        + " x "
        + mat.across().designation()
        + " @ "
        + millimetres(mat.acrossSpacing());
  }

  private static String millimetres(Length length) {
    return BigDecimal.valueOf(length.nanometres(), 6).toPlainString() + " mm";
  }

  private static void known(BarSize size) {
    assertEquals(size, BarSize.named(size.designation()).orElseThrow());
  }
}
