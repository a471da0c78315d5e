package org.pourbook.book.in;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.book.Heading;
import org.pourbook.book.TicketColumn;
import org.pourbook.job.GivenSheet.GivenCell;

/** Finds what the headings of one ticket file mean. */
final class TicketHeadings {

  private static final int SAID = 0;
  private static final int OURS = 1;
  private static final int COMMON = 2;

  private final String file;
  private final TicketColumns said;
  private final Map<TicketColumn, GivenCell> always;

  TicketHeadings(String file, TicketColumns said) {
    this.file = file;
    this.said = said;
    this.always = said.always(file);
  }

  private record Column(int at, int how, String bracket, String heading) {}

  /**
   * The columns of a heading row.
   *
   * @param doubled columns that two common headings may mean
   */
  record Found(
      RawRow row,
      Map<TicketColumn, Column> columns,
      List<TicketColumn> doubled,
      Map<TicketColumn, GivenCell> always) {

    List<TicketColumn> missing() {
      return Arrays.stream(TicketColumn.values())
          .filter(TicketColumn::isRequired)
          .filter(column -> !columns.containsKey(column) && !always.containsKey(column))
          .toList();
    }

    /** A title may be one of our words; a table has at least two headings. */
    boolean isComplete() {
      return missing().isEmpty() && columns.size() > 1;
    }

    int column(TicketColumn column) {
      Column found = columns.get(column);
      return found == null ? -1 : found.at();
    }

    String bracket(TicketColumn column) {
      Column found = columns.get(column);
      return found == null ? "" : found.bracket();
    }

    /** Returns whether sizes stand under a heading that only concrete has. */
    boolean isMix() {
      Column found = columns.get(TicketColumn.SIZE);
      return found != null && found.heading().startsWith("mix");
    }

    GivenCell cell(RawRow of, TicketColumn column) {
      GivenCell cell = of.cell(column(column));
      return cell instanceof GivenCell.Blank ? always.getOrDefault(column, cell) : cell;
    }
  }

  /** Returns the columns that a row names: as was said, by our headings, by common ones. */
  Found in(RawRow row) {
    Map<TicketColumn, Column> columns = new EnumMap<>(TicketColumn.class);
    List<TicketColumn> doubled = new ArrayList<>();
    for (int at = 0; at < row.cells().size(); at++) {
      String heading = CellWords.of(row.cell(at));
      Optional<TicketColumns.Meaning> meaning = said.meaning(file, heading);
      Optional<TicketColumn> ours = TicketColumn.named(heading);
      Optional<TicketColumn> column =
          meaning
              .map(TicketColumns.Meaning::column)
              .or(() -> ours)
              .or(() -> TicketColumn.meant(heading));
      if (column.isPresent()) {
        String own = Heading.of(heading).bracket();
        Column found =
            new Column(
                at,
                meaning.isPresent() ? SAID : ours.isPresent() ? OURS : COMMON,
                meaning.map(TicketColumns.Meaning::bracket).filter(b -> !b.isEmpty()).orElse(own),
                Heading.key(heading));
        Column known = columns.get(column.get());
        if (known == null || found.how() < known.how()) {
          columns.put(column.get(), found);
        } else if (found.how() == known.how()) {
          doubled.add(column.get());
        }
      }
    }
    return new Found(row, columns, doubled, always);
  }
}
