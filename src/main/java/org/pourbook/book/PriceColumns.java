package org.pourbook.book;

import static org.pourbook.book.ColumnGroup.BUYING;
import static org.pourbook.book.ColumnGroup.NOTES;
import static org.pourbook.book.ColumnGroup.SIZE;
import static org.pourbook.book.ColumnGroup.WHAT;
import static org.pourbook.book.Columns.choice;
import static org.pourbook.book.Columns.feet;
import static org.pourbook.book.Columns.money;
import static org.pourbook.book.Columns.number;
import static org.pourbook.book.Columns.of;
import static org.pourbook.book.Columns.percent;
import static org.pourbook.book.Columns.text;
import static org.pourbook.book.Columns.yesNo;

import java.util.List;
import org.pourbook.measure.Greatest;
import org.pourbook.measure.Length;

/** Columns of the sheets Prices and Suppliers. */
final class PriceColumns {

  /** No stock is sold that is shorter. */
  private static final Length SHORTEST = Length.ofInches(1);

  static final List<InputColumn> PRICES =
      List.of(
          text(WHAT, "Material", "concrete, bar, form board, anchor bolt …").mustBeGiven(),
          of(WHAT, "Size", CellKind.SIZE, "#4, 2x6, 3000 psi …; blank answers any size"),
          of(WHAT, "Item", CellKind.CODE, "the supplier's code; rows alike are price tiers"),
          text(WHAT, "Description", "as the supplier calls it"),
          text(WHAT, "Supplier", "name as on sheet Suppliers").mustBeGiven(),
          text(BUYING, "Unit", "what Price buys: each, ft, lb, ton, yd3, box, roll …")
              .mustBeGiven(),
          number(BUYING, "Pack", "how many one Unit holds: 50, or 5 gal")
              .aboveZero()
              .from("0.001")
              .usually("1"),
          money("Price", "of one Unit").mustBeGiven().aboveZero(),
          number(BUYING, "From", "the price holds from this many Units").zeroOrMore().usually("0"),
          feet(SIZE, "Stock length", "of bars and boards").aboveZero().from(SHORTEST),
          feet(SIZE, "Sheet length", "of mesh and retarder").aboveZero().from(SHORTEST),
          feet(SIZE, "Sheet width", "of mesh and retarder").aboveZero().from(SHORTEST),
          of(BUYING, "In stock", CellKind.COUNT, "no more than these can be had")
              .zeroOrMore()
              .upTo(Greatest.QUANTITY),
          yesNo(BUYING, "Taxable", "sales tax is due").usually("yes"),
          of(BUYING, "Lead days", CellKind.COUNT, "working days from order to delivery")
              .zeroOrMore()
              .upTo(Greatest.DAYS)
              .usually("0"),
          of(BUYING, "Valid until", CellKind.DATE, "last day of this price"),
          of(BUYING, "Cost code", CellKind.CODE, "of the builder's books"),
          text(BUYING, "Instead of", "material and size that this may replace"),
          text(NOTES, "Notes", "anything"));

  static final List<InputColumn> SUPPLIERS =
      List.of(
          text(WHAT, "Supplier", "name as on sheet Prices").mustBeGiven(),
          text(WHAT, "Contact", "whom to call"),
          of(WHAT, "Phone", CellKind.CODE, ""),
          text(WHAT, "Email", ""),
          money("Delivery fee", "a delivery; blank = none"),
          money("Free from", "order value from which delivery is free"),
          percent(BUYING, "Tax %", "sales tax").usually("0"),
          text(BUYING, "Currency", "code; one in a batch").usually("USD"),
          number(SIZE, "Load size", "of a truck, in the unit that concrete is sold in")
              .in(ColumnUnit.VOLUME)
              .aboveZero()
              .from("0.1"),
          number(SIZE, "Order step", "least step of an order of concrete")
              .in(ColumnUnit.VOLUME)
              .aboveZero()
              .from("0.01"),
          number(SIZE, "Short load under", "a load under this pays the short-load fee")
              .in(ColumnUnit.VOLUME)
              .zeroOrMore(),
          money("Short load fee", "by Short load basis").usually("0"),
          choice(
                  BUYING,
                  "Short load basis",
                  List.of("flat", "per yd3 short", "per m3 short"),
                  "how the short-load fee is counted")
              .usually("flat"),
          choice(
                  BUYING,
                  "Short load by",
                  List.of("load", "order"),
                  "what is compared with the limit")
              .usually("load"),
          money("Fee per load", "each truck"),
          number(BUYING, "Minutes away", "from plant to site")
              .in(ColumnUnit.MINUTES)
              .zeroOrMore()
              .usually("Practice"),
          number(BUYING, "Free minutes per yd3", "of unloading").zeroOrMore(),
          money("Waiting per minute", "beyond the free minutes"),
          money("Minimum order", "least value of an order"),
          text(NOTES, "Notes", "anything"));

  private PriceColumns() {}
}
