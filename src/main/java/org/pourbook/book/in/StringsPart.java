package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.pourbook.job.GivenSheet.GivenCell;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** Reads {@code sharedStrings.xml}: rich text joined, reading aids for ideographs left out. */
final class StringsPart extends DefaultHandler {

  private static final Pattern ESCAPE = Pattern.compile("_x([0-9A-Fa-f]{4})_");

  private final List<GivenCell> strings = new ArrayList<>();
  private final StringBuilder text = new StringBuilder();
  private boolean inText;
  private int inReadingAid;

  /** Returns the strings by their index, as cells that share them. */
  List<GivenCell> strings() {
    return strings;
  }

  /** Returns a text with the escapes of control characters undone. */
  static String unescaped(String text) {
    return text.indexOf("_x") < 0 ? text : ESCAPE.matcher(text).replaceAll(StringsPart::character);
  }

  private static String character(MatchResult escape) {
    String character = String.valueOf((char) Integer.parseInt(escape.group(1), 16));
    return Matcher.quoteReplacement(character);
  }

  @Override
  public void startElement(String uri, String name, String qName, Attributes attributes) {
    switch (name) {
      case "si" -> text.setLength(0);
      case "rPh" -> inReadingAid++;
      case "t" -> inText = inReadingAid == 0;
      default -> {}
    }
  }

  @Override
  public void endElement(String uri, String name, String qName) {
    switch (name) {
      case "si" -> strings.add(CellValues.text(unescaped(text.toString())));
      case "rPh" -> inReadingAid--;
      case "t" -> inText = false;
      default -> {}
    }
  }

  @Override
  public void characters(char[] chars, int start, int length) {
    if (inText) {
      text.append(chars, start, length);
    }
  }
}
