package org.pourbook.book.out;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Arrays;

/** Bytes of XML in UTF-8 that grow as text is appended. */
final class Utf8 {

  private static final int FIRST_SIZE = 1 << 13;

  /** Bytes that a character takes at most: {@code &amp;}, or three of UTF-8. */
  private static final int MOST_BYTES = 5;

  /** How the format writes a character by its number: {@code _x000D_}. */
  private static final int ESCAPE = 7;

  /** Whole numbers below this are written without a decimal point. */
  private static final double MOST_WHOLE = 1e15;

  private byte[] bytes = new byte[FIRST_SIZE];
  private int size;

  int size() {
    return size;
  }

  void clear() {
    size = 0;
  }

  void writeTo(OutputStream out) throws IOException {
    out.write(bytes, 0, size);
  }

  /** Appends characters of ASCII that need no escape. */
  Utf8 ascii(String text) {
    int length = text.length();
    room(length);
    for (int i = 0; i < length; i++) {
      bytes[size + i] = (byte) text.charAt(i);
    }
    size += length;
    return this;
  }

  Utf8 number(int number) {
    if (number < 0 || number >= 1_000_000) {
      return ascii(Integer.toString(number));
    }
    room(MOST_BYTES + 1);
    int digits = 1;
    for (int rest = number; rest >= 10; rest /= 10) {
      digits++;
    }
    int rest = number;
    for (int i = size + digits - 1; i >= size; i--) {
      bytes[i] = (byte) ('0' + rest % 10);
      rest /= 10;
    }
    size += digits;
    return this;
  }

  /** Appends a number so that it is read back the same. */
  Utf8 number(double number) {
    boolean whole = number == Math.rint(number) && Math.abs(number) < MOST_WHOLE;
    if (!whole) {
      return ascii(Double.toString(number));
    }
    return Math.abs(number) < Integer.MAX_VALUE
        ? number((int) number)
        : ascii(Long.toString((long) number));
  }

  /**
   * Appends text of an element. What XML cannot hold becomes a question mark; what the format would
   * read as a character's number is escaped.
   */
  Utf8 text(String text) {
    int length = text.length();
    room(length * MOST_BYTES);
    for (int i = 0; i < length; i++) {
      char c = text.charAt(i);
      if (c < 0x80) {
        if (c == '_' && isEscape(text, i)) {
          ascii("_x005F");
          room((length - i) * MOST_BYTES);
        }
        one(c);
      } else if (Character.isSurrogate(c)) {
        if (i + 1 < length && Character.isSurrogatePair(c, text.charAt(i + 1))) {
          i++;
          pair(Character.toCodePoint(c, text.charAt(i)));
        } else {
          bytes[size++] = '?';
        }
      } else {
        several(c);
      }
    }
    return this;
  }

  private void one(char c) {
    switch (c) {
      case '<' -> named("&lt;");
      case '>' -> named("&gt;");
      case '&' -> named("&amp;");
      case '\r' -> named("&#13;");
      default -> bytes[size++] = (byte) (c >= ' ' || c == '\n' || c == '\t' ? c : '?');
    }
  }

  private void named(String entity) {
    for (int i = 0; i < entity.length(); i++) {
      bytes[size++] = (byte) entity.charAt(i);
    }
  }

  private void several(char c) {
    if (c < 0x800) {
      bytes[size++] = (byte) (0xC0 | c >> 6);
    } else if (c >= 0xFFFE) {
      bytes[size++] = '?';
      return;
    } else {
      bytes[size++] = (byte) (0xE0 | c >> 12);
      bytes[size++] = (byte) (0x80 | c >> 6 & 0x3F);
    }
    bytes[size++] = (byte) (0x80 | c & 0x3F);
  }

  private void pair(int point) {
    bytes[size++] = (byte) (0xF0 | point >> 18);
    bytes[size++] = (byte) (0x80 | point >> 12 & 0x3F);
    bytes[size++] = (byte) (0x80 | point >> 6 & 0x3F);
    bytes[size++] = (byte) (0x80 | point & 0x3F);
  }

  /** Returns whether {@code _xHHHH_} stands there. */
  private static boolean isEscape(String text, int at) {
    if (at + ESCAPE > text.length() || text.charAt(at + 1) != 'x') {
      return false;
    }
    for (int i = at + 2; i < at + ESCAPE - 1; i++) {
      if (Character.digit(text.charAt(i), 16) < 0) {
        return false;
      }
    }
    return text.charAt(at + ESCAPE - 1) == '_';
  }

  private void room(int more) {
    if (bytes.length - size < more) {
      bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, size + more));
    }
  }
}
