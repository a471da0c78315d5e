package org.pourbook.book;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A column of a file of delivery tickets or invoices, with other headings that plants give it. A
 * sheet {@code Ticket columns} names those that stand here under none of these.
 */
public enum TicketColumn {
  TICKET(
      "Ticket",
      true,
      "Ticket no",
      "Ticket number",
      "Docket",
      "Docket no",
      "Docket number",
      "Delivery note",
      "Delivery ticket"),
  DATE("Date", false, "Ticket date", "Docket date", "Delivery date", "Ship date", "Invoice date"),
  SUPPLIER("Supplier", true, "Plant", "Plant name", "Vendor", "Seller", "Sold by"),
  JOB("Job", true, "Order job", "Job code", "Job no", "Project", "Deliver to", "Ship to"),
  MATERIAL("Material", false, "Product", "Goods"),
  SIZE("Size", false, "Mix", "Mix design", "Grade", "Dimension"),
  ITEM("Item", false, "Item no", "Item code", "Product code", "Product no", "Part no", "SKU"),
  QUANTITY("Quantity", true, "Qty", "Qty delivered", "Load qty", "Volume", "Amount delivered"),
  UNIT("Unit", false, "U/M", "UOM", "Unit of measure", "Units"),
  TRUCK("Truck", false, "Truck no", "Truck number", "Vehicle"),
  BATCHED("Batched", false, "Batch time", "Load time", "Loaded", "Time batched"),
  ARRIVED("Arrived", false, "Arrival", "Arrive job", "On site", "On job", "Time arrived"),
  DISCHARGED(
      "Discharged", false, "Unload end", "End unload", "Finish unload", "Pour end", "Emptied"),
  WATER_ADDED("Water added", false, "Added water", "Site water", "Water on site"),
  UNIT_PRICE("Unit price", false, "Price", "Price each", "Rate"),
  AMOUNT("Amount", false, "Ext. price", "Extended price", "Extension", "Line total", "Ext amount"),
  CHARGE("Charge", false, "Fee", "Charge type", "Surcharge", "Fee type"),
  INVOICE("Invoice", false, "Invoice no", "Invoice number", "Bill", "Bill no", "Bill number");

  private final String label;
  private final boolean required;
  private final List<String> others;

  TicketColumn(String label, boolean required, String... others) {
    this.label = label;
    this.required = required;
    this.others = Arrays.stream(others).map(Heading::key).toList();
  }

  /** Returns our own heading. */
  public String label() {
    return label;
  }

  /** Returns whether no row can be matched without it. */
  public boolean isRequired() {
    return required;
  }

  /** Returns the column that our own heading names, see {@link Heading}. */
  public static Optional<TicketColumn> named(String heading) {
    return find(Heading.key(heading), false);
  }

  /** Returns the column that a plant's common heading means. */
  public static Optional<TicketColumn> meant(String heading) {
    return find(Heading.key(heading), true);
  }

  private static Optional<TicketColumn> find(String key, boolean common) {
    return Arrays.stream(values())
        .filter(c -> common ? c.others.contains(key) : Heading.key(c.label).equals(key))
        .findFirst();
  }
}
