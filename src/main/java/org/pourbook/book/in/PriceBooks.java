package org.pourbook.book.in;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.pourbook.book.InputSheet;
import org.pourbook.buy.PriceBook;
import org.pourbook.desk.Batch.InputFile;
import org.pourbook.job.GivenSheet;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem;

/** Reads price books: a workbook, a folder, or a {@code prices.csv} with {@code suppliers.csv}. */
public final class PriceBooks {

  static final Set<InputSheet> SHEETS = EnumSet.of(InputSheet.PRICES, InputSheet.SUPPLIERS);

  private PriceBooks() {}

  /** A price book as read, with its sheets and files. */
  public record PriceInput(PriceBook book, List<GivenSheet> given, List<InputFile> files) {
    public PriceInput {
      given = List.copyOf(given);
      files = List.copyOf(files);
    }
  }

  /**
   * Returns the price book, without the rows that cannot be used.
   *
   * @throws UnreadableFile if the file cannot be read, or holds no sheet Prices
   */
  public static Checked<PriceInput> read(Path path) throws UnreadableFile {
    List<Problem> problems = new ArrayList<>();
    RawBook raw = InputFiles.read(path, InputBook.choice(SHEETS));
    InputBook book = new InputBook(raw, SHEETS, problems);
    if (!book.has(InputSheet.PRICES)) {
      throw new UnreadableFile(path + " has no sheet Prices");
    }
    PriceBook prices = read(book, problems);
    problems.sort(ProblemOrder.BY_PLACE);
    return new Checked<>(new PriceInput(prices, book.given(), book.files()), problems);
  }

  /** Returns the price book of the sheets Prices and Suppliers, empty where there are none. */
  static PriceBook read(InputBook book, List<Problem> problems) {
    for (InputSheet sheet : SHEETS) {
      book.table(sheet).ifPresent(table -> TableReader.checkHeadings(table, true, problems));
    }
    PriceRows prices = new PriceRows(book.table(InputSheet.PRICES), problems);
    SupplierRows suppliers =
        new SupplierRows(book.table(InputSheet.SUPPLIERS), prices.metricSellers(), problems);
    return new PriceBook(prices.of(suppliers), suppliers.suppliers(), suppliers.currency());
  }
}
