package org.pourbook.book.in;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.pourbook.book.Heading;
import org.pourbook.buy.OnHand;
import org.pourbook.desk.Batch.InputFile;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Greatest;
import org.pourbook.measure.Length;
import org.pourbook.measure.LengthFormat;
import org.pourbook.measure.LumberSize;
import org.pourbook.measure.NumberText;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;
import org.pourbook.problem.Checked;
import org.pourbook.problem.Problem;
import org.pourbook.problem.Problem.Effect;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.MaterialKey;

/** Reads lists of offcuts: sheet Offcuts of a workbook, else its first sheet, or a CSV file. */
public final class OffcutsFile {

  private static final String SHEET = Heading.key("Offcuts");
  private static final String LENGTH = "Stock length";
  private static final List<String> REQUIRED =
      List.of(Heading.key("Material"), Heading.key(LENGTH), Heading.key("Pieces"));

  private final List<Problem> problems = new ArrayList<>();
  private final List<OnHand> offcuts = new ArrayList<>();

  private OffcutsFile() {}

  /** The offcuts that can be used, and the files they were read from. */
  public record Offcuts(List<OnHand> offcuts, List<InputFile> files) {
    public Offcuts {
      offcuts = List.copyOf(offcuts);
      files = List.copyOf(files);
    }
  }

  /**
   * Returns the offcuts of a list, without the rows that cannot be used.
   *
   * @throws UnreadableFile if the file cannot be read, or holds no such list
   */
  public static Checked<Offcuts> read(Path path) throws UnreadableFile {
    RawBook book = InputFiles.read(path, OffcutsFile::isWanted);
    OffcutsFile reader = new OffcutsFile();
    boolean isList = false;
    for (RawSheet sheet : book.sheets()) {
      isList |= reader.read(sheet);
    }
    if (!isList) {
      throw new UnreadableFile(path + " has no headings Material, Stock length and Pieces");
    }
    return new Checked<>(new Offcuts(reader.offcuts, book.files()), reader.problems);
  }

  private static boolean isWanted(String name, List<String> all) {
    boolean named = all.stream().anyMatch(other -> Heading.key(other).equals(SHEET));
    return named ? Heading.key(name).equals(SHEET) : name.equals(all.get(0));
  }

  private boolean read(RawSheet sheet) {
    Map<String, Integer> at = Map.of();
    Optional<Unit> headed = Optional.empty();
    for (RawRow raw : sheet.rows()) {
      if (!at.isEmpty()) {
        read(new HeadedRows.Row(sheet.place(), raw, at), headed);
        continue;
      }
      Map<String, Integer> headings = HeadedRows.headings(raw);
      if (headings.keySet().containsAll(REQUIRED)) {
        at = headings;
        String heading = CellWords.of(raw.cell(at.getOrDefault(Heading.key(LENGTH), -1)));
        headed = Heading.of(heading).unit().flatMap(Unit::named);
      }
    }
    return !at.isEmpty();
  }

  private void read(HeadedRows.Row row, Optional<Unit> headed) {
    int before = problems.size();
    MaterialKey key = new MaterialKey(PriceRows.canonical(row.text("Material")), row.text("Size"));
    checkKey(row, key);
    UnitSystem units = units(row, key, headed);
    Unit bare = units.isMetric() ? Unit.M : Unit.FT;
    Optional<Length> length =
        Amounts.length(row.cell(LENGTH), bare)
            .filter(there -> there.isPositive() && !there.isMoreThan(Greatest.LENGTH));
    if (length.isEmpty()) {
      refuse(
          row,
          LENGTH,
          "a length above zero, such as 9'-5\" or 2.8 m, at most "
              + LengthFormat.of(Greatest.LENGTH, units));
    }
    Optional<Integer> pieces =
        Amounts.plainNumber(row.cell("Pieces"))
            .filter(n -> n.signum() > 0 && n.stripTrailingZeros().scale() <= 0)
            .filter(n -> n.compareTo(Greatest.COUNT) <= 0)
            .map(BigDecimal::intValueExact);
    if (pieces.isEmpty()) {
      refuse(
          row, "Pieces", "a whole number above zero, at most " + NumberText.text(Greatest.COUNT));
    }
    if (problems.size() == before) {
      offcuts.add(new OnHand(key, units, length.get(), pieces.get(), row.text("From")));
    }
  }

  private void checkKey(HeadedRows.Row row, MaterialKey key) {
    boolean bar = key.material().equals(Material.BAR.label());
    if (!bar && !key.material().equals(Material.FORM_BOARD.label())) {
      refuse(row, "Material", "form board or bar");
    } else if (bar && BarSize.named(key.size()).isEmpty()) {
      refuse(row, "Size", "a bar such as #4");
    } else if (!bar && LumberSize.named(key.size()).isEmpty()) {
      refuse(row, "Size", "a board such as 2x6");
    }
  }

  /** Column Units says how a bare length is read; else the heading's unit, else the size. */
  private UnitSystem units(HeadedRows.Row row, MaterialKey key, Optional<Unit> headed) {
    String written = row.text("Units");
    for (UnitSystem system : UnitSystem.values()) {
      if (Heading.key(system.label()).equals(Heading.key(written))) {
        return system;
      }
    }
    if (!written.isEmpty()) {
      refuse(row, "Units", "ft-in or m");
    }
    boolean metric = headed.map(Unit.M::equals).orElse(PriceRows.isMetric(key, ""));
    return metric ? UnitSystem.M : UnitSystem.FT_IN;
  }

  private void refuse(HeadedRows.Row row, String heading, String expected) {
    problems.add(
        new Problem(
            row.place(heading),
            "",
            CellWords.found(row.cell(heading)),
            expected,
            Effect.ROW_LEFT_OUT));
  }
}
