package org.pourbook.book.out;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.pourbook.buy.Bought;
import org.pourbook.buy.CutSheet;
import org.pourbook.buy.JobTotals;
import org.pourbook.buy.Line;
import org.pourbook.buy.Load;
import org.pourbook.buy.OnHand;
import org.pourbook.buy.Order;
import org.pourbook.buy.Price;
import org.pourbook.buy.PriceBook;
import org.pourbook.buy.Supplier;
import org.pourbook.cut.CutJob;
import org.pourbook.cut.CutResult;
import org.pourbook.desk.Batch;
import org.pourbook.desk.Estimate;
import org.pourbook.job.Change;
import org.pourbook.job.ChangeState;
import org.pourbook.job.GivenSheet;
import org.pourbook.job.GivenSheet.GivenCell;
import org.pourbook.job.GivenSheet.GivenRow;
import org.pourbook.job.Job;
import org.pourbook.job.Placing;
import org.pourbook.job.Pour;
import org.pourbook.job.Practice;
import org.pourbook.job.Setting;
import org.pourbook.job.SettingValue;
import org.pourbook.job.Weather;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.BoltSize;
import org.pourbook.measure.Length;
import org.pourbook.measure.Money;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;
import org.pourbook.problem.Place;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.BarMark;
import org.pourbook.takeoff.BoltPiece;
import org.pourbook.takeoff.Caution;
import org.pourbook.takeoff.ConcreteNeed;
import org.pourbook.takeoff.JointLine;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.Quantity;
import org.pourbook.takeoff.ReadyItem;
import org.pourbook.takeoff.Strip;
import org.pourbook.takeoff.TakeOff;

/**
 * A small invented estimate made by hand: BAKERY in feet and inches, BARN in metres; two suppliers,
 * a shared order of boards, one material without a price, one job left out.
 */
final class DemoEstimate {

  static final Place PLACE = new Place("Jobs", 2, 0);
  private static final LocalDate POUR_DAY = LocalDate.of(2027, 5, 4);
  private static final MaterialKey CONCRETE = new MaterialKey("concrete", "3000 psi");
  private static final MaterialKey BAR = new MaterialKey("bar", "#4");
  private static final MaterialKey BOARD = new MaterialKey("form board", "2x6");
  private static final MaterialKey BOLT = new MaterialKey("anchor bolt", "1/2 x 10");
  private static final MaterialKey STAKE = new MaterialKey("stake", "24 in");
  private static final MaterialKey PUMP = new MaterialKey("pump", "");
  private static final Supplier PLANT = plant();
  private static final Supplier YARD = yard();

  private DemoEstimate() {}

  static Estimate both() {
    List<TakeOff> takeOffs = List.of(bakery(), barn());
    return new Estimate(batch(takeOffs), takeOffs, bought(), problems(), "0.1.0");
  }

  /** Returns the estimate of one job whose texts a spreadsheet program might run. */
  static Estimate spiteful(String text) {
    Job job = job(text, UnitSystem.FT_IN, Optional.empty());
    TakeOff takeOff =
        takeOff(job, List.of(), List.of(), List.of(new Caution("", text, "CON-1")), List.of());
    return new Estimate(
        batch(List.of(takeOff)),
        List.of(takeOff),
        new Bought(
            List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of()),
        List.of(),
        "0.1.0");
  }

  private static Batch batch(List<TakeOff> takeOffs) {
    return new Batch(
        takeOffs.stream().map(TakeOff::job).toList(),
        new PriceBook(List.of(), List.of(PLANT, YARD), "USD"),
        List.of(given()),
        List.of(new Batch.InputFile("spring.xlsx", "ab".repeat(32))));
  }

  private static GivenSheet given() {
    return new GivenSheet(
        "Jobs",
        List.of("Job", "Description", "Pour date", "Tax %", "Dog on site", "Start"),
        List.of(
            new GivenRow(
                "Jobs",
                3,
                List.of(
                    new GivenCell.Text("BAKERY"),
                    new GivenCell.Text("=1+1"),
                    new GivenCell.Date(POUR_DAY),
                    new GivenCell.Number(5, true),
                    new GivenCell.YesNo(true),
                    new GivenCell.Time(LocalTime.of(7, 30)))),
            new GivenRow(
                "Jobs",
                4,
                List.of(
                    new GivenCell.Text("BARN"),
                    new GivenCell.Error("#REF!"),
                    new GivenCell.Blank(),
                    new GivenCell.Number(0.1, false)))));
  }

  private static List<Problem> problems() {
    return List.of(
        new Problem(
            new Place("Sections", 7, 6),
            "SHED",
            "-4",
            "a thickness above zero, e.g. 4\"",
            Problem.Effect.JOB_LEFT_OUT),
        new Problem(
            new Place("Jobs", 1, 9), "", "Dog on site", "a known column", Problem.Effect.NOTE));
  }

  private static TakeOff bakery() {
    Job job = job("BAKERY", UnitSystem.FT_IN, Optional.of(POUR_DAY));
    List<Quantity> quantities =
        List.of(
            Quantity.told("S1", "plan area", 864, Unit.FT2, "36'-0\" × 24'-0\" = 864", "CON-1", 1),
            wasted("S1", "slab", 10.666666666666666, "36'-0\" × 24'-0\" × 4\" = 10.67", "CON-2"),
            Quantity.of("P1", "bolts", 20, Unit.EACH, "4 walls × 5 = 20", "BOLT-2", BOLT, 1),
            Quantity.of("S1", "bars along", 460, Unit.FT, "20 × 23'-0\" = 460", "BAR-1", BAR, 1),
            wasted("S1", "turned-down edge", 2.1, "120'-0\" × 12\" × 6\" = 2.1", "CON-3"),
            wasted("", "pump loss", 0.5, "0.5 once a pour", "CON-7"),
            Quantity.of("S1", "bars across", 350, Unit.FT, "10 × 35'-0\" = 350", "BAR-1", BAR, 1),
            Quantity.of(
                "S1", "form boards", 120, Unit.FT, "2 × (36 + 24) = 120", "FORM-1", BOARD, 1),
            Quantity.of(
                "S1", "stakes", 42, Unit.EACH, "13 + 9 + 13 + 9 − 2 = 42", "FORM-4", STAKE, 1),
            Quantity.of("", "pump", 1, Unit.EACH, "placed by pump", "CON-7", PUMP, 1));
    return takeOff(
        job,
        quantities,
        List.of(
            new ConcreteNeed(
                1, "3000 psi", m3(12.766666666666666), m3(14.543333333), m3(0.5), false)),
        List.of(new Caution("P1", "Embedment 6-1/2\" is less than 7\".", "BOLT-3, IRC R403.1.6")),
        List.of(new ReadyItem("Bolts laid out and counted", "20", "BOLT-2")));
  }

  private static double m3(double yd3) {
    return Unit.YD3.toBase(yd3);
  }

  private static Quantity wasted(
      String section, String what, double yd3, String working, String rule) {
    return new Quantity(
        section,
        what,
        yd3,
        Unit.YD3,
        working,
        rule,
        Optional.of(CONCRETE),
        1,
        OptionalDouble.of(rule.equals("CON-7") ? 0 : 10));
  }

  private static TakeOff barn() {
    Job job = job("BARN", UnitSystem.M, Optional.empty());
    List<Quantity> quantities =
        List.of(
            Quantity.of("F", "boards", 30, Unit.M, "2 × (10 + 5) = 30", "FORM-1", BOARD, 1),
            Quantity.of(
                "F",
                "slab",
                7.5,
                Unit.M3,
                "10 × 5 × 150 mm = 7.5",
                "CON-2",
                new MaterialKey("concrete", "25 MPa"),
                1));
    return takeOff(
        job,
        quantities,
        List.of(new ConcreteNeed(1, "25 MPa", 7.5, 8.25, 0, false)),
        List.of(),
        List.of());
  }

  private static TakeOff takeOff(
      Job job,
      List<Quantity> quantities,
      List<ConcreteNeed> concrete,
      List<Caution> cautions,
      List<ReadyItem> ready) {
    boolean metric = job.units().isMetric();
    return new TakeOff(
        job,
        quantities,
        List.of(),
        List.of(),
        concrete,
        metric ? List.of() : boltPieces(),
        metric ? List.of() : barMarks(),
        metric ? List.of() : joints(),
        cautions,
        ready,
        metric ? List.of() : strips());
  }

  private static List<BoltPiece> boltPieces() {
    List<Length> positions = new ArrayList<>();
    for (int inches : new int[] {9, 68, 127, 183}) {
      positions.add(Length.ofInches(inches));
    }
    return List.of(
        new BoltPiece(
            "P1",
            1,
            2,
            Length.ofFeet(16),
            8,
            positions,
            BoltSize.named("1/2 x 10").orElseThrow(),
            Length.ofInches(15, 2)));
  }

  private static List<BarMark> barMarks() {
    BarSize four = BarSize.named("#4").orElseThrow();
    return List.of(
        new BarMark(
            "S1",
            "A1",
            four,
            BarMark.BarShape.STRAIGHT,
            20,
            Length.ofFeet(23),
            Length.ofFeet(23),
            Optional.empty(),
            Optional.empty(),
            1),
        new BarMark(
            "S1",
            "C1",
            four,
            BarMark.BarShape.CORNER,
            8,
            Length.ofInches(187, 4),
            Length.ofFeet(2),
            Optional.of(Length.ofFeet(2)),
            Optional.empty(),
            0));
  }

  private static List<JointLine> joints() {
    return List.of(
        new JointLine(
            "S1",
            "1",
            "control joint, across Length",
            Length.ofFeet(24),
            Optional.of(Length.ofInches(1)),
            0,
            "",
            "saw within 12 h"));
  }

  private static List<Strip> strips() {
    return List.of(
        new Strip("S1", 1, 1, Length.ofFeet(8), Length.ofFeet(36), m3(4), LocalTime.of(7, 0)),
        new Strip("S1", 1, 2, Length.ofFeet(8), Length.ofFeet(36), m3(4), LocalTime.of(7, 16)));
  }

  private static Job job(String code, UnitSystem units, Optional<LocalDate> date) {
    Pour pour =
        new Pour(
            1,
            date,
            LocalTime.of(7, 0),
            "3000 psi",
            Placing.PUMP,
            5,
            "5 in",
            OptionalDouble.empty(),
            Optional.empty(),
            Weather.UNKNOWN);
    Change change =
        new Change("1", date, "owner", "move the drain", Optional.empty(), ChangeState.OPEN, PLACE);
    return new Job(
        code,
        "invented " + code,
        "",
        "1 Example Lane",
        "",
        units,
        Optional.of("yard"),
        Optional.empty(),
        List.of(pour),
        List.of(),
        List.of(),
        List.of(),
        units.isMetric() ? List.of() : List.of(change),
        List.of(),
        List.of(),
        practice(),
        PLACE);
  }

  private static Practice practice() {
    Map<Setting, SettingValue> values = new LinkedHashMap<>();
    values.put(
        Setting.WASTE_ALLOWANCE,
        new SettingValue("", "%", Double.NaN, Optional.empty(), "default (CON-6, published)"));
    values.put(
        Setting.ORDER_STEP,
        new SettingValue("0.25", "yd3", m3(0.25), Optional.empty(), "Practice!C7"));
    values.put(
        Setting.DELIVER_TOGETHER,
        new SettingValue("7", "days", 7, Optional.empty(), "default (BUY-5, common practice)"));
    values.put(Setting.NORTH, new SettingValue("30", "", 30, Optional.empty(), "Practice!C8"));
    return new Practice(values, Map.of(), Map.of());
  }

  private static Supplier plant() {
    Supplier named = Supplier.named("Plant Alpha", PLACE);
    return new Supplier(
        named.name(),
        "A. Nobody",
        "555 0100",
        "plant@example.org",
        named.deliveryFee(),
        named.freeFrom(),
        new BigDecimal("7.5"),
        OptionalDouble.of(m3(10)),
        OptionalDouble.of(m3(0.25)),
        OptionalDouble.empty(),
        BigDecimal.ZERO,
        false,
        false,
        Optional.empty(),
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty(),
        PLACE);
  }

  private static Supplier yard() {
    return Supplier.named("Yard Beta", PLACE);
  }

  private static Price price(
      MaterialKey key, String item, String supplier, String unit, String of) {
    return new Price(
        key,
        item,
        key + " of " + supplier,
        supplier,
        unit,
        BigDecimal.ONE,
        Optional.empty(),
        new BigDecimal(of),
        BigDecimal.ZERO,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        true,
        2,
        Optional.empty(),
        "03-300",
        Optional.empty(),
        PLACE);
  }

  private static Bought bought() {
    return new Bought(
        lines(),
        List.of(concreteOrder(), yardOrder(), unpricedOrder()),
        loads(),
        List.of(cutSheet()),
        List.of(new OnHand(BOARD, UnitSystem.FT_IN, Length.ofInches(113), 2, "BAKERY, BARN")),
        totals(),
        List.of(new Bought.BuyCaution("BARN", "", "No price for concrete 25 MPa.", "BUY-1")),
        List.of());
  }

  private static List<Line> lines() {
    return List.of(
        line("BAKERY", CONCRETE, 13.266666666666666, 9.623115577889447, 14.543333333333333, "yd3")
            .bought(price(CONCRETE, "RM3000", "Plant Alpha", "yd3", "151.00"), 1, "14.75", "PB-001")
            .of("2227.25"),
        line("BAKERY", BAR, 810, 0, 840, "ft")
            .bought(price(BAR, "B4-20", "Yard Beta", "each", "9.125"), 20, "42", "PB-002")
            .of("383.25"),
        line("BAKERY", BOARD, 120, 0, 128, "ft")
            .bought(price(BOARD, "L26-16", "Yard Beta", "each", "11.99"), 16, "7.5", "PB-002")
            .of("89.93"),
        line("BAKERY", STAKE, 42, 5, 44.1, "each")
            .bought(price(STAKE, "ST24", "Yard Beta", "bundle", "25"), 25, "2", "PB-002")
            .of("50.00"),
        line("BAKERY", BOLT, 20, 10, 22, "each")
            .bought(price(BOLT, "AB10", "Yard Beta", "box", "41.30"), 25, "1", "PB-002")
            .of("41.30"),
        line("BAKERY", PUMP, 1, 0, 1, "each")
            .bought(price(PUMP, "PUMP", "Plant Alpha", "each", "480"), 1, "1", "PB-001")
            .service()
            .of("480.00"),
        line("BARN", new MaterialKey("concrete", "25 MPa"), 7.5, 10, 8.25, "m3")
            .unpriced("8.25", "PB-003"),
        line("BARN", BOARD, 30, 0, 30.48, "m")
            .bought(price(BOARD, "L26-16", "Yard Beta", "each", "11.99"), 4.8768, "6.5", "PB-002")
            .of("77.93"));
  }

  private static DemoLine line(
      String job, MaterialKey key, double net, double allowance, double needed, String unit) {
    return new DemoLine(job, key, net, allowance, needed, unit);
  }

  private static Order concreteOrder() {
    return order(
        "PB-001",
        Optional.of(PLANT),
        List.of("BAKERY"),
        List.of(
            good(1, List.of("BAKERY"), CONCRETE, "RM3000", "14.75", "yd3", "151.00", "2227.25"),
            good(2, List.of("BAKERY"), PUMP, "PUMP", "1", "each", "480", "480.00"),
            fee(3, List.of("BAKERY"), "short load", "95.00")),
        "2707.25",
        "95.00",
        Optional.of(new BigDecimal("7.5")),
        "203.04",
        List.of("Pour 1, 3000 psi, 14.75 yd3, slump 5 in, placed by pump, first truck 07:00"));
  }

  private static Order yardOrder() {
    List<String> two = List.of("BAKERY", "BARN");
    return order(
        "PB-002",
        Optional.of(YARD),
        two,
        List.of(
            good(1, List.of("BAKERY"), BAR, "B4-20", "42", "each", "9.125", "383.25"),
            good(2, two, BOARD, "L26-16", "14", "each", "11.99", "167.86"),
            good(3, List.of("BAKERY"), STAKE, "ST24", "2", "bundle", "25", "50.00"),
            good(4, List.of("BAKERY"), BOLT, "AB10", "1", "box", "41.30", "41.30"),
            fee(5, two, "delivery", "45.00")),
        "642.41",
        "45.00",
        Optional.of(BigDecimal.ZERO),
        "0.00",
        List.of());
  }

  private static Order unpricedOrder() {
    Order.OrderLine line =
        new Order.OrderLine(
            1,
            false,
            List.of("BARN"),
            new MaterialKey("concrete", "25 MPa"),
            "",
            "",
            Optional.empty(),
            new BigDecimal("8.25"),
            "m3",
            Optional.empty(),
            Optional.empty(),
            true);
    return new Order(
        "PB-003",
        Optional.empty(),
        "BARN",
        "2 Example Lane",
        List.of("BARN"),
        Optional.empty(),
        List.of(line),
        Money.ZERO,
        Money.ZERO,
        Optional.empty(),
        Money.ZERO,
        Money.ZERO,
        false,
        List.of("Nobody in the price book sells these: ask for prices."));
  }

  private static Order order(
      String number,
      Optional<Supplier> supplier,
      List<String> jobs,
      List<Order.OrderLine> lines,
      String goods,
      String fees,
      Optional<BigDecimal> taxPercent,
      String tax,
      List<String> notes) {
    Money sum = money(goods).plus(money(fees)).plus(money(tax));
    return new Order(
        number,
        supplier,
        "yard",
        "1 Example Lane",
        jobs,
        Optional.of(POUR_DAY),
        lines,
        money(goods),
        money(fees),
        taxPercent,
        money(tax),
        sum,
        true,
        notes);
  }

  private static Order.OrderLine good(
      int line,
      List<String> jobs,
      MaterialKey key,
      String item,
      String packs,
      String unit,
      String price,
      String amount) {
    return new Order.OrderLine(
        line,
        false,
        jobs,
        key,
        item,
        key.toString(),
        Optional.of(POUR_DAY.minusDays(7)),
        new BigDecimal(packs),
        unit,
        Optional.of(new BigDecimal(price)),
        Optional.of(money(amount)),
        true);
  }

  private static Order.OrderLine fee(int line, List<String> jobs, String name, String amount) {
    return new Order.OrderLine(
        line,
        true,
        jobs,
        new MaterialKey(name, ""),
        "",
        "",
        Optional.empty(),
        BigDecimal.ONE,
        "each",
        Optional.of(new BigDecimal(amount)),
        Optional.of(money(amount)),
        false);
  }

  private static List<Load> loads() {
    return List.of(
        new Load(
            "BAKERY",
            1,
            "3000 psi",
            1,
            m3(7.5),
            LocalTime.of(7, 0),
            Optional.of(POUR_DAY.atTime(7, 0)),
            "S1 strips 1–2",
            ""),
        new Load(
            "BARN",
            1,
            "25 MPa",
            1,
            8.25,
            LocalTime.of(8, 30),
            Optional.empty(),
            "F",
            "confirm by phone before batching"));
  }

  private static CutSheet cutSheet() {
    CutResult.Pattern pattern =
        new CutResult.Pattern(
            new CutJob.Stock("L26-16", Length.ofFeet(16), 11_990_000, Integer.MAX_VALUE),
            14,
            List.of(
                new CutResult.Cut(Length.ofInches(48), 1, "BARN F side W1"),
                new CutResult.Cut(Length.ofInches(1097, 8), 1, "BAKERY S1 side L1")),
            Length.ofInches(25, 4));
    CutResult.Division division =
        new CutResult.Division(
            new CutJob.Run(
                Length.ofInches(2578, 8),
                2,
                Length.ZERO,
                Length.ofInches(48),
                Length.ofFeet(16),
                1,
                14,
                "BAKERY S1 side L1"),
            List.of(Length.ofInches(1097, 8), Length.ofInches(1097, 8), Length.ofInches(48)),
            14);
    return new CutSheet(
        List.of("BAKERY", "BARN"),
        UnitSystem.FT_IN,
        BOARD,
        List.of(pattern),
        List.of(division),
        money("167.86"),
        money("155.87"),
        false,
        money("149.90"));
  }

  private static List<JobTotals> totals() {
    return List.of(
        new JobTotals(
            "BAKERY",
            money("2791.73"),
            money("480.00"),
            money("125.00"),
            money("203.04"),
            money("3599.77"),
            0),
        new JobTotals(
            "BARN",
            money("77.93"),
            money("0.00"),
            money("15.00"),
            money("0.00"),
            money("92.93"),
            1));
  }

  static Money money(String amount) {
    return Money.rounded(new BigDecimal(amount));
  }
}
