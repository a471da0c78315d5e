package org.pourbook.plan;

import java.util.ArrayList;
import java.util.List;
import org.pourbook.plan.Drawing.Anchor;
import org.pourbook.plan.Drawing.Words;

/**
 * The words of a drawing, each where it stands clear of those before it. No font is measured: a
 * letter counts for a share of its size.
 */
final class Labels {

  private final List<Words> words = new ArrayList<>();
  private final List<Box> boxes = new ArrayList<>();

  /** The room of words on the page [pt]. */
  private record Box(double left, double top, double right, double bottom) {

    static Box of(Words words) {
      double width = words.width();
      double height = words.height();
      double angle = StrictMath.toRadians(words.degrees());
      double cos = Math.abs(StrictMath.cos(angle));
      double sin = Math.abs(StrictMath.sin(angle));
      double across = (width * cos + height * sin) / 2;
      double up = (width * sin + height * cos) / 2;
      double x = words.anchor() == Anchor.MIDDLE ? words.x() : words.x() + width / 2;
      return new Box(x - across, words.y() - up, x + across, words.y() + up);
    }

    boolean meets(Box other) {
      return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    boolean isOnPage() {
      return left >= 0 && top >= 0 && right <= Drawing.WIDTH && bottom <= Drawing.HEIGHT;
    }
  }

  /** Puts the first of several that is clear of others and on the page, else the first. */
  void put(List<Words> choices) {
    Words chosen = choices.stream().filter(this::isClear).findFirst().orElse(choices.get(0));
    words.add(chosen);
    boxes.add(Box.of(chosen));
  }

  /** Puts the first of several that is clear of others and on the page, else none. */
  boolean putIfClear(List<Words> choices) {
    boolean clear = choices.stream().anyMatch(this::isClear);
    if (clear) {
      put(choices);
    }
    return clear;
  }

  private boolean isClear(Words choice) {
    Box box = Box.of(choice);
    return box.isOnPage() && boxes.stream().noneMatch(box::meets);
  }

  List<Words> words() {
    return words;
  }
}
