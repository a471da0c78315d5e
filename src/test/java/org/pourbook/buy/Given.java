package org.pourbook.buy;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.pourbook.job.Change;
import org.pourbook.job.ChangeState;
import org.pourbook.job.Extra;
import org.pourbook.job.ExtraKind;
import org.pourbook.job.Job;
import org.pourbook.job.Placing;
import org.pourbook.job.Pour;
import org.pourbook.job.Practice;
import org.pourbook.job.Setting;
import org.pourbook.job.SettingValue;
import org.pourbook.job.Weather;
import org.pourbook.measure.Length;
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;
import org.pourbook.problem.Place;
import org.pourbook.takeoff.ConcreteNeed;
import org.pourbook.takeoff.Joined;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.PieceNeed;
import org.pourbook.takeoff.Quantity;
import org.pourbook.takeoff.TakeOff;

/** A job with its take-off, built up in tests. */
final class Given {
  static final Place HERE = new Place("Jobs", 1, 0);

  private final String code;
  private UnitSystem units = UnitSystem.FT_IN;
  private Optional<String> deliverTo = Optional.empty();
  private Optional<BigDecimal> taxPercent = Optional.empty();
  private Placing placing = Placing.CHUTE;
  private int crew = 5;
  private final List<Optional<LocalDate>> dates = new ArrayList<>();
  private final Map<Setting, SettingValue> settings = new EnumMap<>(Setting.class);
  private final Map<String, SettingValue> allowances = new HashMap<>();
  private final Map<String, SettingValue> ahead = new HashMap<>();
  private final List<Change> changes = new ArrayList<>();
  private final List<Extra> extras = new ArrayList<>();
  private final List<Quantity> quantities = new ArrayList<>();
  private final List<PieceNeed> pieces = new ArrayList<>();
  private final List<PieceNeed> pegs = new ArrayList<>();
  private final List<ConcreteNeed> concrete = new ArrayList<>();

  private Given(String code) {
    this.code = code;
    for (Setting setting : Setting.values()) {
      settings.put(setting, usual(setting));
    }
  }

  static Given job(String code) {
    return new Given(code);
  }

  private static SettingValue usual(Setting setting) {
    String text = setting.usual();
    if (text.isEmpty()) {
      return new SettingValue("", "", Double.NaN, Optional.empty(), "default");
    }
    return switch (setting.type()) {
      case VOLUME, RATE -> number(Unit.YD3.toBase(Double.parseDouble(text)));
      case LENGTH_IN -> length(Length.ofInches(new BigDecimal(text)));
      case LENGTH_FT -> length(Length.ofFeet(new BigDecimal(text)));
      case PERCENT, MINUTES, DAYS, RATIO, COUNT, MONEY, STRENGTH, DEGREES ->
          number(Double.parseDouble(text));
      case TIME, TEXT, YES_NO ->
          new SettingValue(text, "", Double.NaN, Optional.empty(), "default");
    };
  }

  private static SettingValue number(double number) {
    return new SettingValue(Double.toString(number), "", number, Optional.empty(), "default");
  }

  private static SettingValue length(Length length) {
    return new SettingValue(length.toString(), "", length.metres(), Optional.of(length), "default");
  }

  Given metric() {
    units = UnitSystem.M;
    return this;
  }

  Given deliverTo(String name) {
    deliverTo = Optional.of(name);
    return this;
  }

  Given tax(String percent) {
    taxPercent = Optional.of(new BigDecimal(percent));
    return this;
  }

  Given placedBy(Placing how, int people) {
    placing = how;
    crew = people;
    return this;
  }

  /** Adds a pour on a day. */
  Given pour(String date) {
    dates.add(Optional.of(LocalDate.parse(date)));
    return this;
  }

  /** Adds a change that no section has taken up. */
  Given openChange(String change, String what) {
    return change(change, what, ChangeState.OPEN);
  }

  Given change(String change, String what, ChangeState state) {
    Optional<String> none = Optional.empty();
    changes.add(new Change(change, Optional.empty(), "", what, none, state, HERE));
    return this;
  }

  Given set(Setting setting, double number) {
    settings.put(setting, number(number));
    return this;
  }

  Given set(Setting setting, Length length) {
    settings.put(setting, length(length));
    return this;
  }

  Given allowance(Material material, double percent) {
    allowances.put(material.label(), number(percent));
    return this;
  }

  /** Sets the working days ahead of the pour of a material, or of goods. */
  Given ahead(String what, int days) {
    ahead.put(what, number(days));
    return this;
  }

  Given needs(Material material, String size, double amount) {
    return needs(material, size, amount, 1);
  }

  Given needs(Material material, String size, double amount, int pour) {
    quantities.add(
        Quantity.of(
            "A", "what", amount, material.unit(units), "", "TEST", material.of(size), pour));
    return this;
  }

  Given pieces(Material material, String size, Length length, int count, String goesTo) {
    return pieces(material, size, length, count, goesTo, 1);
  }

  Given pieces(Material material, String size, Length length, int count, String goesTo, int pour) {
    pieces.add(new PieceNeed(material.of(size), length, count, goesTo, "", pour));
    double metres = length.metres() * count;
    return needs(material, size, material.unit(units).fromBase(metres), pour);
  }

  /** Adds stakes or braces that are bought by the piece. */
  Given pegs(Material material, String size, Length length, int count, String goesTo, int pour) {
    pegs.add(new PieceNeed(material.of(size), length, count, goesTo, "", pour));
    return needs(material, size, count, pour);
  }

  /** Adds pieces of runs that the cut plan may divide otherwise. */
  Given joined(
      Material material, String size, Length length, int runs, String goesTo, Joined joined) {
    int count = runs * joined.courses();
    pieces.add(new PieceNeed(material.of(size), length, count, goesTo, "", 1, Optional.of(joined)));
    return needs(material, size, material.unit(units).fromBase(length.metres() * count));
  }

  /** Adds a pour's concrete in yd3, and its quantity row by section. */
  Given concrete(int pour, String mix, double planYd3, double allowedYd3) {
    return concrete(pour, mix, planYd3, allowedYd3, 0, false);
  }

  Given concrete(
      int pour, String mix, double planYd3, double allowedYd3, double pumpYd3, boolean bagged) {
    concrete.add(
        new ConcreteNeed(
            pour,
            mix,
            Unit.YD3.toBase(planYd3),
            Unit.YD3.toBase(allowedYd3),
            Unit.YD3.toBase(pumpYd3),
            bagged));
    return this;
  }

  Given section(String section, String mix, int pour, double yd3) {
    quantities.add(
        Quantity.of(section, "slab", yd3, Unit.YD3, "", "CON-2", Material.CONCRETE.of(mix), pour));
    return this;
  }

  Given extra(String what, String size, double quantity, String unit, ExtraKind kind) {
    extras.add(new Extra(what, size, quantity, unit, 1, Optional.empty(), kind, "", HERE));
    return this;
  }

  TakeOff takeOff() {
    return new TakeOff(
        job(),
        quantities,
        pieces,
        pegs,
        concrete,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  Job job() {
    if (dates.isEmpty()) {
      dates.add(Optional.empty());
    }
    List<Pour> pours = new ArrayList<>();
    for (Optional<LocalDate> date : dates) {
      pours.add(
          new Pour(
              pours.size() + 1,
              date,
              LocalTime.of(7, 0),
              "3000 psi",
              placing,
              crew,
              "4 in",
              OptionalDouble.empty(),
              Optional.empty(),
              Weather.UNKNOWN));
    }
    return new Job(
        code,
        "",
        "",
        code + " lane",
        "",
        units,
        deliverTo,
        taxPercent,
        pours,
        List.of(),
        List.of(),
        List.of(),
        changes,
        extras,
        List.of(),
        new Practice(settings, allowances, ahead),
        HERE);
  }

  /** Returns a price of a whole item; see the methods of {@link Row} for more. */
  static Row price(String material, String size, String supplier, String unit, String price) {
    return new Row(
        new Price(
            new MaterialKey(material, size),
            (supplier + " " + material + " " + size).strip(),
            "",
            supplier,
            unit,
            BigDecimal.ONE,
            Optional.empty(),
            new BigDecimal(price),
            BigDecimal.ZERO,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            OptionalInt.empty(),
            true,
            0,
            Optional.empty(),
            "",
            Optional.empty(),
            HERE));
  }

  /** A row of the price book in the making. */
  record Row(Price price) {
    Row pack(String pack) {
      return with(
          price.item(), new BigDecimal(pack), price.from(), price.stockLength(), price.inStock());
    }

    Row from(String units) {
      return with(
          price.item(), price.pack(), new BigDecimal(units), price.stockLength(), price.inStock());
    }

    Row stock(Length length) {
      return with(
          price.item() + " " + length,
          price.pack(),
          price.from(),
          Optional.of(length),
          price.inStock());
    }

    Row inStock(int limit) {
      return with(
          price.item(), price.pack(), price.from(), price.stockLength(), OptionalInt.of(limit));
    }

    Row item(String item) {
      return with(item, price.pack(), price.from(), price.stockLength(), price.inStock());
    }

    private Row with(
        String item,
        BigDecimal pack,
        BigDecimal from,
        Optional<Length> stockLength,
        OptionalInt inStock) {
      return copy(item, pack, from, stockLength, inStock, price.taxable(), price.leadDays());
    }

    Row untaxed() {
      return copy(
          price.item(),
          price.pack(),
          price.from(),
          price.stockLength(),
          price.inStock(),
          false,
          price.leadDays());
    }

    Row lead(int days) {
      return copy(
          price.item(),
          price.pack(),
          price.from(),
          price.stockLength(),
          price.inStock(),
          price.taxable(),
          days);
    }

    Row until(LocalDate day) {
      return new Row(terms(Optional.of(day), price.insteadOf()));
    }

    Row insteadOf(String material, String size) {
      return new Row(terms(price.validUntil(), Optional.of(new MaterialKey(material, size))));
    }

    private Price terms(Optional<LocalDate> validUntil, Optional<MaterialKey> insteadOf) {
      return new Price(
          price.key(),
          price.item(),
          price.description(),
          price.supplier(),
          price.orderUnit(),
          price.pack(),
          price.packUnit(),
          price.price(),
          price.from(),
          price.stockLength(),
          price.sheetLength(),
          price.sheetWidth(),
          price.inStock(),
          price.taxable(),
          price.leadDays(),
          validUntil,
          price.costCode(),
          insteadOf,
          price.place());
    }

    private Row copy(
        String item,
        BigDecimal pack,
        BigDecimal from,
        Optional<Length> stockLength,
        OptionalInt inStock,
        boolean taxable,
        int leadDays) {
      return new Row(
          new Price(
              price.key(),
              item,
              price.description(),
              price.supplier(),
              price.orderUnit(),
              pack,
              price.packUnit(),
              price.price(),
              from,
              stockLength,
              price.sheetLength(),
              price.sheetWidth(),
              inStock,
              taxable,
              leadDays,
              price.validUntil(),
              price.costCode(),
              price.insteadOf(),
              price.place()));
    }
  }

  static PriceBook book(List<Supplier> suppliers, Row... rows) {
    return new PriceBook(List.of(rows).stream().map(Row::price).toList(), suppliers, "USD");
  }
}
