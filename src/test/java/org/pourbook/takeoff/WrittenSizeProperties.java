package org.pourbook.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.Locale;
import java.util.SplittableRandom;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class WrittenSizeProperties {

  private static final long SEED = 20261125;

  /** The same written as a pattern, which is easier to read and many times slower. */
  private static final Pattern INCHES =
      Pattern.compile(
          "(?<=[0-9])\\s*in(ch(es)?)?\\b|[\\s\"\u201d\u2033]+", Pattern.CASE_INSENSITIVE);

  private static final String[] PARTS = {
    "1",
    "2",
    "10",
    " ",
    "  ",
    "\t",
    "\"",
    "\u2033",
    "in",
    "IN",
    "inch",
    "Inches",
    "inchesx",
    "x",
    "#4",
    "/",
    "_",
    "form board",
    "pin",
    "-"
  };

  @Test
  void anyTextIsBroughtToTheFormThatThePatternGives() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int round = 0; round < 20_000; round++) {
      StringBuilder made = new StringBuilder();
      for (int parts = random.nextInt(8); parts > 0; parts--) {
        made.append(PARTS[random.nextInt(PARTS.length)]);
      }
      String text = made.toString();
      String byPattern = INCHES.matcher(text).replaceAll("").toLowerCase(Locale.ROOT);
      assertEquals(byPattern, WrittenSize.normal(text), "seed " + SEED + ", text <" + text + ">");
    }
  }

  @Test
  void aKeyThatIsNormalAlreadyIsKept() {
    MaterialKey key = new MaterialKey("formboard", "2x6");
    assertSame(key, key.normal());
  }
}
