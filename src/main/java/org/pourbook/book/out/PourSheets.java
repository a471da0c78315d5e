package org.pourbook.book.out;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.pourbook.buy.Bought;
import org.pourbook.buy.Load;
import org.pourbook.desk.Estimate;
import org.pourbook.measure.UnitSystem;
import org.pourbook.takeoff.ReadyItem;
import org.pourbook.takeoff.Strip;
import org.pourbook.takeoff.TakeOff;

/** What counts on pour day: truckloads, the ready list, cautions. */
final class PourSheets {

  static final String VOLUME = "Volume";

  /** Heading of the quantity for which the tool worked out a sheet's rows. */
  static final String WORKED_OUT_FOR = "Worked out for";

  private PourSheets() {}

  static SheetSpec<Load> loads(Estimate estimate, BatchUnits units) {
    Map<String, UnitSystem> systems = new HashMap<>();
    estimate
        .takeOffs()
        .forEach(takeOff -> systems.put(takeOff.job().code(), takeOff.job().units()));
    List<Column<Load>> columns = new ArrayList<>();
    columns.add(Column.text("Job", 12, Load::job));
    columns.addAll(units.column(load -> of(systems, load)));
    columns.add(Column.count("Pour", 6, Load::pour));
    columns.add(Column.text("Mix", 13, Load::mix));
    columns.add(Column.count("Load", 6, Load::load));
    columns.add(
        Column.number(
            units.volumeHeading(VOLUME),
            Look.NUMBER,
            9,
            load -> BatchUnits.loaded(load.volumeM3(), of(systems, load))));
    columns.add(
        Column.cell(
            "Date",
            Look.DATE,
            12,
            load -> Cell.ofDay(load.arrivesOn().map(LocalDateTime::toLocalDate))));
    columns.add(Column.cell("Arrives", Look.TIME, 10, load -> new Cell.Clock(load.arrives())));
    columns.add(Column.text("Covers", 44, Load::covers));
    columns.add(Column.text("Note", 34, Load::note));
    Map<List<Object>, Double> orders = new HashMap<>();
    estimate
        .bought()
        .loads()
        .forEach(load -> orders.merge(pourOf(load), load.volumeM3(), Double::sum));
    columns.add(
        Column.onScreen(
            Column.number(
                units.volumeHeading(WORKED_OUT_FOR),
                Look.NUMBER,
                9,
                load ->
                    BatchUnits.volume(orders.getOrDefault(pourOf(load), 0.0), of(systems, load)))));
    return SheetSpec.landscape(
        "Loads",
        "The truckloads of each pour, in the order of coming. They hold for the order that the tool"
            + " worked out; Checks tells when Materials orders another.",
        columns,
        estimate.bought().loads());
  }

  private static List<Object> pourOf(Load load) {
    return List.of(load.job(), load.pour(), load.mix());
  }

  private static UnitSystem of(Map<String, UnitSystem> systems, Load load) {
    return systems.getOrDefault(load.job(), UnitSystem.FT_IN);
  }

  static SheetSpec<SteelSheets.Of<Strip>> pourPlan(Estimate estimate, BatchUnits units) {
    List<Column<SteelSheets.Of<Strip>>> columns = new ArrayList<>();
    columns.add(Column.text("Job", 12, row -> row.job().code()));
    columns.addAll(units.column(SteelSheets.Of::units));
    columns.add(Column.cell("Done", Look.TICK, 6, row -> Cell.BLANK));
    columns.add(Column.count("Pour", 6, row -> row.item().pour()));
    columns.add(Column.text("Section", 12, row -> row.item().section()));
    columns.add(Column.count("Strip", 6, row -> row.item().strip()));
    columns.addAll(
        BatchUnits.lengths(
            units.lengthHeading("Width"),
            "Width as read",
            SteelSheets.Of::units,
            row -> Optional.of(row.item().width())));
    columns.addAll(
        BatchUnits.lengths(
            units.lengthHeading("Length"),
            "Length as read",
            SteelSheets.Of::units,
            row -> Optional.of(row.item().length())));
    columns.add(
        Column.number(
            units.volumeHeading("Volume"),
            Look.NUMBER,
            9,
            row -> BatchUnits.volume(row.item().volumeM3(), row.units())));
    Map<List<Object>, Double> sections = new HashMap<>();
    List<SteelSheets.Of<Strip>> rows = SteelSheets.rows(estimate, TakeOff::strips);
    rows.forEach(row -> sections.merge(sectionOf(row), row.item().volumeM3(), Double::sum));
    columns.add(
        Column.onScreen(
            Column.number(
                units.volumeHeading(WORKED_OUT_FOR),
                Look.NUMBER,
                9,
                row ->
                    BatchUnits.volume(sections.getOrDefault(sectionOf(row), 0.0), row.units()))));
    columns.add(Column.cell("Start", Look.TIME, 10, row -> new Cell.Clock(row.item().start())));
    return SheetSpec.portrait(
        "Pour plan",
        "The strips in the order of placing, with when each begins, for the sizes as the tool read"
            + " them.",
        columns,
        rows);
  }

  private static List<Object> sectionOf(SteelSheets.Of<Strip> row) {
    return List.of(row.job().code(), row.item().section());
  }

  static SheetSpec<SteelSheets.Of<ReadyItem>> readyList(Estimate estimate) {
    return SheetSpec.portrait(
        "Ready list",
        "What to have and to check before the first truck; tick what is there.",
        List.of(
            Column.text("Job", 12, row -> row.job().code()),
            Column.cell("Done", Look.TICK, 6, row -> Cell.BLANK),
            Column.text("What", 46, row -> row.item().what()),
            Column.text("How many", 14, row -> row.item().howMany()),
            Column.text("Why", 50, row -> row.item().why())),
        SteelSheets.rows(estimate, TakeOff::ready));
  }

  record CautionRow(String job, String section, String says, String rule) {}

  static SheetSpec<CautionRow> cautions(Estimate estimate) {
    Map<String, List<Bought.BuyCaution>> bought =
        estimate.bought().cautions().stream()
            .collect(Collectors.groupingBy(Bought.BuyCaution::job));
    List<CautionRow> rows = new ArrayList<>();
    for (TakeOff takeOff : estimate.takeOffs()) {
      String job = takeOff.job().code();
      takeOff
          .cautions()
          .forEach(c -> rows.add(new CautionRow(job, c.section(), c.says(), c.rule())));
      for (Bought.BuyCaution c : bought.getOrDefault(job, List.of())) {
        rows.add(new CautionRow(job, c.section(), c.says(), c.rule()));
      }
    }
    return SheetSpec.landscape(
        "Cautions",
        "What to think of before the pour. The local code and a licensed designer decide.",
        List.of(
            Column.text("Job", 12, CautionRow::job),
            Column.text("Section", 12, CautionRow::section),
            Column.text("Caution", 90, CautionRow::says),
            Column.text("Rule", 26, CautionRow::rule)),
        rows);
  }
}
