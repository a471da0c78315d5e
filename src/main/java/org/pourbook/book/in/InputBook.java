package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pourbook.book.Heading;
import org.pourbook.book.InputSheet;
import org.pourbook.desk.Batch.InputFile;
import org.pourbook.job.GivenSheet;
import org.pourbook.problem.Place;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;

/** The tables of the input sheets that a workbook or folder holds. */
final class InputBook {

  private static final String GIVEN = Heading.key(InputSheet.GIVEN);
  private static final String GIVEN_JOBS = GIVEN + Heading.key(InputSheet.JOBS.label());

  private final Map<InputSheet, Table> tables = new EnumMap<>(InputSheet.class);
  private final Set<InputSheet> broken = new LinkedHashSet<>();
  private final Set<InputSheet> present = new LinkedHashSet<>();
  private final List<InputFile> files;

  /**
   * Returns what sheets a book holds.
   *
   * @param wanted the others are not read
   */
  InputBook(RawBook book, Set<InputSheet> wanted, List<Problem> problems) {
    this.files = book.files();
    boolean given = isOrderWorkbook(book.names());
    for (String name : book.names()) {
      if (sheet(name, book.names()).isEmpty() && !given && !Layouts.isReadFirst(name)) {
        problems.add(unknown(name, "a sheet of the jobs workbook; this one is not read"));
      }
    }
    if (!given) {
      Layouts.note(book).ifPresent(problems::add);
    }
    for (RawSheet raw : book.sheets()) {
      if (Layouts.isReadFirst(raw.name())) {
        continue;
      }
      InputSheet sheet = sheet(raw.name(), book.names()).orElseThrow();
      if (!wanted.contains(sheet)) {
        continue;
      }
      if (!present.add(sheet)) {
        problems.add(unknown(raw.place(), "one sheet " + sheet.label() + "; this one is not read"));
        continue;
      }
      Optional<Table> table = TableReader.read(sheet, raw, given, problems);
      table.ifPresent(found -> tables.put(sheet, found));
      if (table.isEmpty() && !raw.rows().isEmpty()) {
        broken.add(sheet);
      }
    }
  }

  private static Problem unknown(String name, String expected) {
    return new Problem(Place.ofSheet(name), "", "sheet " + name, expected, Effect.NOTE);
  }

  /** Returns which sheets of a book are read: an order workbook's given ones alone. */
  static RawBook.Choice choice(Set<InputSheet> wanted) {
    return (name, all) ->
        Layouts.isReadFirst(name) || sheet(name, all).filter(wanted::contains).isPresent();
  }

  /** Returns whether the book is an order workbook, with its input as read. */
  static boolean isOrderWorkbook(List<String> names) {
    return names.stream().anyMatch(name -> Heading.key(name).equals(GIVEN_JOBS));
  }

  private static Optional<InputSheet> sheet(String name, List<String> all) {
    if (!isOrderWorkbook(all)) {
      return InputSheet.named(name);
    }
    String key = Heading.key(name);
    return key.startsWith(GIVEN)
        ? InputSheet.named(key.substring(GIVEN.length()))
        : Optional.empty();
  }

  Optional<Table> table(InputSheet sheet) {
    return Optional.ofNullable(tables.get(sheet));
  }

  /** Returns whether the book has a sheet of that name, readable or not. */
  boolean has(InputSheet sheet) {
    return present.contains(sheet);
  }

  /** Returns whether a sheet holds something but no heading row. */
  boolean isBroken(InputSheet sheet) {
    return broken.contains(sheet);
  }

  /** Returns the input as read, sheet by sheet. */
  List<GivenSheet> given() {
    List<GivenSheet> given = new ArrayList<>();
    tables.values().forEach(table -> given.add(table.given()));
    return given;
  }

  List<InputFile> files() {
    return files;
  }
}
