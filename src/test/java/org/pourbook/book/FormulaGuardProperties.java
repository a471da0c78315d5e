package org.pourbook.book;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Texts of the characters that matter; the seed is in every message. */
class FormulaGuardProperties {

  private static final String LETTERS = "=+-@\t\r''\" ,;1a\n";

  private static String text(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    StringBuilder text = new StringBuilder();
    for (int left = random.nextInt(6); left > 0; left--) {
      text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
    }
    return text.toString();
  }

  @Test
  void everyTextComesBackAndNoneIsTakenForAFormula() {
    for (long seed = 0; seed < 20_000; seed++) {
      String text = text(seed);
      String guarded = FormulaGuard.guarded(text);
      assertEquals(text, FormulaGuard.unguarded(guarded), "seed " + seed);
      assertFalse(FormulaGuard.isTakenForFormula(guarded), "seed " + seed + ": " + guarded);
    }
  }

  /** A program of others writes such texts as they are. */
  @Test
  void aTextWhoseApostropheGuardsNothingIsLeftAsItIs() {
    for (String text : List.of("'tis", "'", "24'", "' =1", "")) {
      assertEquals(text, FormulaGuard.unguarded(text));
    }
    assertEquals("'=1", FormulaGuard.guarded("=1"));
    assertEquals("=1", FormulaGuard.unguarded("'=1"));
    assertEquals("''tis", FormulaGuard.guarded("'tis"));
  }
}
