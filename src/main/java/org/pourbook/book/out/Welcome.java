package org.pourbook.book.out;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.pourbook.book.InputSheet;
import org.pourbook.book.out.ReadFirst.Entry;
import org.pourbook.book.out.ReadFirst.Part;
import org.pourbook.measure.UnitSystem;

/** What the first sheets of the workbooks say. */
final class Welcome {

  /** The sheets of an order workbook in the order of the user's day, with what each is for. */
  private static final List<Entry> DAY =
      List.of(
          Entry.toSheet("Summary", "What each job takes and costs. Begin here."),
          Entry.toSheet("Problems", "What could not be used, cell by cell. Mend these first."),
          Entry.toSheet("Cautions", "What to think of before the pour."),
          Entry.toSheet("Checks", "Sums compared with one another; every line should be right."),
          Entry.toSheet("Materials", "What to buy for each job, from whom, and why."),
          Entry.toSheet("Orders", "Every line of every order; fees are lines of their own."),
          Entry.toSheet("Order totals", "What each order comes to and by when it is placed."),
          Entry.toSheet("Order pages", "The orders to print and sign, one a page."),
          Entry.toSheet("Ready list", "What must be on site before the first truck; tick it."),
          Entry.toSheet("Loads", "The truckloads, in the order of coming."),
          Entry.toSheet("Pour plan", "The strips, in the order of placing."),
          Entry.toSheet("Cutting", "The cut list in large type, for the saw."),
          Entry.toSheet("Bolt layout", "Where each bolt stands, in large type, for the forms."),
          Entry.toSheet("Cut list", "The same cuts as a table, with where each piece goes."),
          Entry.toSheet("Runs", "Where boards are butted and bars lapped."),
          Entry.toSheet("Offcuts", "What is left over for the yard."),
          Entry.toSheet("Bar list", "Every bar mark to bend and tie."),
          Entry.toSheet("Bolts", "The bolts of every plate piece as a table."),
          Entry.toSheet("Joints", "Joints to saw, tool, dowel or fill."),
          Entry.toSheet("Plans", "A drawing of each job."),
          Entry.toSheet("Takeoff", "Every quantity with its working and its rule."),
          Entry.toSheet("Cut proof", "How near each cut plan is to the best possible."),
          Entry.toSheet("Rules", "Each rule, where it comes from, and how sure that is."),
          Entry.toSheet("Basis", "The settings in force and the files that were read."));

  private static final Part CAUTIONS =
      new Part(
          "Cautions",
          List.of(
              Entry.of(
                  "No design",
                  "This orders material. The local code and a licensed designer decide thickness,"
                      + " steel, bolts and footings."),
              Entry.of(
                  "Skin, eyes, lungs",
                  "Wet concrete burns. Dust of sawing and mixing holds silica."),
              Entry.of(
                  "Site",
                  "Guard bars that stand up. Keep pump and chute away from power lines, trucks away"
                      + " from open edges. Call before digging or driving stakes.")));

  private Welcome() {}

  /**
   * Returns the first sheet of an order workbook.
   *
   * @param names of its other sheets
   */
  static ReadFirst order(Set<String> names, int jobs) {
    List<Part> parts = new ArrayList<>();
    parts.add(forWhom());
    parts.add(
        new Part(
            InputSheet.IN_THIS_ORDER,
            DAY.stream().filter(entry -> names.contains(entry.name())).toList()));
    parts.add(mayBeChanged());
    parts.add(CAUTIONS);
    return new ReadFirst(
        "Order workbook",
        "What "
            + (jobs == 1 ? "one job takes" : jobs + " jobs take")
            + " and what that costs, with the papers for office, crew and bookkeeper.",
        parts);
  }

  /**
   * Returns the first sheet of a supplement.
   *
   * @param names of its other sheets
   */
  static ReadFirst supplement(Set<String> names) {
    List<Entry> sheets = new ArrayList<>();
    sheets.add(Entry.toSheet("Summary", "What each job came to and comes to now. Begin here."));
    sheets.add(
        Entry.toSheet(
            "Changes found", "Every cell that reads otherwise than when it was ordered."));
    sheets.add(
        Entry.toSheet("Materials", "What to order besides and what to send back; the rest holds."));
    sheets.addAll(
        DAY.stream()
            .filter(entry -> names.contains(entry.name()))
            .filter(entry -> sheets.stream().noneMatch(one -> one.name().equals(entry.name())))
            .toList());
    return new ReadFirst(
        "Supplement",
        "What has changed since the order, what that costs, and the orders to place besides.",
        List.of(
            new Part(InputSheet.IN_THIS_ORDER, sheets),
            new Part(
                "What it holds",
                List.of(
                    Entry.of(
                        "Orders to print",
                        "Only what is ordered besides. What was ordered before stands; what is sent"
                            + " back is asked of the supplier."),
                    Entry.of(
                        "Figures of a job",
                        "Worked out by the tool from both inputs: after another change run revise"
                            + " again, with this workbook as the earlier order."))),
            CAUTIONS));
  }

  private static Part forWhom() {
    return new Part(
        "For whom",
        List.of(
            Entry.of("The office", "Summary to Order pages: what to buy, place it, sign it."),
            Entry.of("The crew", "Ready list to Plans: print these; boxes are for ticking."),
            Entry.of("The bookkeeper", "Orders and Materials, matched with tickets by reconcile."),
            Entry.of(
                "Whoever asks why", "Takeoff, Cut proof, Rules, Basis, and the Given sheets.")));
  }

  private static Part mayBeChanged() {
    return new Part(
        "What may be changed",
        List.of(
            Entry.of(
                "Tinted cells",
                "Prices, allowances and tax rates. Needs, packs, amounts and totals follow."),
            Entry.of("Boxes and lines", "To tick and to sign, on paper or on the screen."),
            Entry.of(
                "Sizes of a job",
                "Sizes and Waste % of rectangles may be changed on Given Sections to see what"
                    + " follows; Checks then says to run the tool again, since layouts, loads and"
                    + " cut plans are worked out there."),
            Entry.of(
                "Names",
                "Leave names of sheets and headings as they are: quote, revise and reconcile find"
                    + " them by name. Sheets and columns of your own may be"
                    + " added.")));
  }

  /** Returns the first sheet of a template. */
  static ReadFirst template(String title, List<InputSheet> inputs, UnitSystem units) {
    List<Entry> sheets = new ArrayList<>();
    for (InputSheet input : inputs) {
      String text = Character.toUpperCase(input.rowIs().charAt(0)) + input.rowIs().substring(1);
      sheets.add(
          Entry.toSheet(
              input.label(), text + (input.isRequired() ? ". Must be filled." : ". If needed.")));
    }
    return new ReadFirst(
        title,
        "To be filled in; pourbook reads it.",
        List.of(new Part(InputSheet.IN_THIS_ORDER, sheets), filling(units), CAUTIONS));
  }

  private static Part filling(UnitSystem units) {
    String bare =
        units.isMetric()
            ? "A bare number is metres, or what the heading says in brackets. 3.2 m and 150 mm are"
                + " understood too."
            : "A bare number is feet, or what the heading says in brackets. 24'-6 1/2\", 24 ft 6 in"
                + " and 150 mm are understood too.";
    return new Part(
        "How to fill it in",
        List.of(
            Entry.of(
                "Example",
                "The job EXAMPLE shows how it is meant. Delete its rows whole on each sheet; the"
                    + " prices are invented."),
            Entry.of(
                "Stars and blanks",
                "Columns with * must be filled. Any other may be blank and takes the default that"
                    + " stands above its heading."),
            Entry.of("Lengths", bare),
            Entry.of(
                "Lists",
                "A cell with a list offers what stands on the other sheets: jobs, the job's"
                    + " sections, materials and their sizes. Keep rows of one job, and of one"
                    + " material, together. A warning may be overruled."),
            Entry.of(
                "Headings",
                "Protected against slips, without a password. Rows, columns and sheets of your own"
                    + " may be added; a table ends at its first empty row.")));
  }
}
