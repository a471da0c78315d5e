package org.pourbook.book.out;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.pourbook.desk.Quote;

/** The quotation workbook of one supplier. */
public final class QuotationWorkbook {

  private static final String TITLE = "Quotation";

  private QuotationWorkbook() {}

  /**
   * Writes the workbook to a {@code .xlsx} file, or one CSV a sheet into a folder; whole or not at
   * all.
   *
   * @throws java.nio.file.FileAlreadyExistsException if the target exists and may not be replaced
   * @throws IOException if the target cannot be written
   */
  public static void write(Quote quote, Path target, boolean overwrite) throws IOException {
    BatchUnits units = BatchUnits.of(quote.batch().jobs());
    String footer = TITLE + " of " + quote.supplier().name();
    WorkbookFile.write(
        sheets(quote, units), new Paper(!units.us(), footer), TITLE, target, overwrite);
  }

  /** Returns whether the lines come to what the deliveries come to. */
  private static Cell light(QuotationSheet lines, TermsSheets terms) {
    return Light.of(
        List.of(
            new Light.Pair(
                lines.spec(),
                List.of(QuotationSheet.AMOUNT),
                terms.deliveriesSpec(),
                List.of(TermsSheets.GOODS))),
        "lines and Deliveries");
  }

  static List<Sheet> sheets(Quote quote, BatchUnits units) {
    QuotationSheet lines = new QuotationSheet(quote);
    TermsSheets terms = new TermsSheets(quote, lines);
    return List.of(
        new QuotationPage(quote, lines, terms),
        lines.spec().withLight(light(lines, terms)),
        terms.deliveriesSpec(),
        terms.termsSpec(),
        CutSheets.cutList(quote.quoted().cutSheets(), units),
        RunsSheet.spec(quote.quoted().cutSheets(), units),
        CutSheets.cutProof(quote.quoted().cutSheets()),
        RecordSheets.problems(quote.problems()),
        RecordSheets.basis(quote.batch(), quote.version()));
  }
}
