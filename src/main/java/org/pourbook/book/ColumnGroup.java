package org.pourbook.book;

/** What a column is about; columns of one group stand together under one band of the template. */
public enum ColumnGroup {
  WHAT("what"),
  SIZE("size"),
  POSITION("position"),
  EDGE("edge"),
  UNDER("under"),
  STEEL("steel"),
  FORMS("forms"),
  FINISH("finish"),
  POUR("pour"),
  WEATHER("weather"),
  BUYING("buying"),
  NOTES("notes");

  private final String label;

  ColumnGroup(String label) {
    this.label = label;
  }

  public String label() {
    return label;
  }
}
