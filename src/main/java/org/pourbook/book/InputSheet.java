package org.pourbook.book;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** An input sheet with its columns in their usual order. */
public enum InputSheet {
  JOBS("Jobs", true, "one row a job", JobColumns.JOBS),
  POURS("Pours", false, "one row a pour, where a job has several", JobColumns.POURS),
  SECTIONS("Sections", true, "one row a piece of slab", SectionColumns.SECTIONS),
  OUTLINES(
      "Outlines",
      false,
      "one row a corner of a section that is no rectangle",
      SectionColumns.OUTLINES),
  PLATES("Plates", false, "one row a straight wall plate", PartColumns.PLATES),
  JOINTS("Joints", false, "one row a joint with dowels, ties or filler", PartColumns.JOINTS),
  CHANGES("Changes", false, "one row a change that the owner asked for", PartColumns.CHANGES),
  EXTRAS("Extras", false, "one row a thing that no rule computes", PartColumns.EXTRAS),
  DEPTH_CHECKS(
      "Depth checks",
      false,
      "one row a depth measured on the prepared base",
      PartColumns.DEPTH_CHECKS),
  PRACTICE(
      "Practice", false, "one row a setting that differs from its default", JobColumns.PRACTICE),
  PRICES("Prices", false, "one row a price", PriceColumns.PRICES),
  SUPPLIERS("Suppliers", false, "one row a supplier", PriceColumns.SUPPLIERS);

  /** What stands before a sheet's name where an order workbook gives the input as read. */
  public static final String GIVEN = "Given ";

  /** The sheet of a workbook of ours that says how to use it; nothing is read from it. */
  public static final String READ_FIRST = "Read first";

  /** What stands over the sheets that it names. */
  public static final String IN_THIS_ORDER = "In this order";

  /** Headings that an order workbook adds to a given sheet. */
  public static final String FROM_SHEET = "From sheet";

  public static final String FROM_ROW = "From row";

  /** How headings end that an order workbook adds beside the cells of a given sheet. */
  public static final String IN_FIGURES = " in figures";

  public static final String WHEN_RUN = " when run";

  public static final String CHANGED = "Changed since run";

  private final String label;
  private final boolean required;
  private final String rowIs;
  private final List<InputColumn> columns;
  private final Map<String, InputColumn> byKey = new LinkedHashMap<>();

  /** By the headings as declared, which are asked for cell by cell. */
  private final Map<String, InputColumn> byHeading = new HashMap<>();

  InputSheet(String label, boolean required, String rowIs, List<InputColumn> columns) {
    this.label = label;
    this.required = required;
    this.rowIs = rowIs;
    this.columns = columns;
    for (InputColumn column : columns) {
      byHeading.put(column.heading(), column);
      if (byKey.put(column.key(), column) != null) {
        throw new IllegalStateException("two columns " + column.heading() + " in " + label);
      }
    }
  }

  /** Returns whether an order workbook adds a column of that heading to a given sheet. */
  public static boolean isAdded(String heading) {
    String key = Heading.key(heading);
    return key.endsWith(Heading.key(IN_FIGURES))
        || key.endsWith(Heading.key(WHEN_RUN))
        || key.equals(Heading.key(CHANGED));
  }

  /** Returns the sheet's name. */
  public String label() {
    return label;
  }

  /** Returns whether a jobs workbook must have it. */
  public boolean isRequired() {
    return required;
  }

  /** Returns what one row is, in words. */
  public String rowIs() {
    return rowIs;
  }

  public List<InputColumn> columns() {
    return columns;
  }

  /** Returns whether it belongs to the price book rather than to the jobs. */
  public boolean isOfPriceBook() {
    return this == PRICES || this == SUPPLIERS;
  }

  /** Returns the column that a heading names, see {@link Heading}. */
  public Optional<InputColumn> column(String heading) {
    InputColumn declared = byHeading.get(heading);
    return Optional.ofNullable(declared != null ? declared : byKey.get(Heading.key(heading)));
  }

  /** Returns the sheet that a name means, see {@link Heading}. */
  public static Optional<InputSheet> named(String name) {
    String key = Heading.key(name);
    for (InputSheet sheet : values()) {
      if (Heading.key(sheet.label).equals(key)) {
        return Optional.of(sheet);
      }
    }
    return Optional.empty();
  }
}
