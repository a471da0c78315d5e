package org.pourbook.takeoff;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.job.BarMat;
import org.pourbook.job.BarRun;
import org.pourbook.job.Edge;
import org.pourbook.job.Finish;
import org.pourbook.job.Job;
import org.pourbook.job.Joint;
import org.pourbook.job.JointKind;
import org.pourbook.job.JointSpacing;
import org.pourbook.job.Kind;
import org.pourbook.job.Placing;
import org.pourbook.job.Position;
import org.pourbook.job.Pour;
import org.pourbook.job.Practice;
import org.pourbook.job.Section;
import org.pourbook.job.Setting;
import org.pourbook.job.SettingValue;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.job.Weather;
import org.pourbook.job.Where;
import org.pourbook.measure.BarSize;
import org.pourbook.measure.Length;
import org.pourbook.measure.UnitSystem;
import org.pourbook.problem.Place;

/** A job with steel, built up by a test; every setting at its default, the price book given. */
final class SteelFixture {

  static final Place PLACE = new Place("Sections", 1, -1);

  UnitSystem units = UnitSystem.FT_IN;
  int pours = 1;
  final Map<Setting, SettingValue> settings = new EnumMap<>(Setting.class);
  final Map<String, Length> stock = new HashMap<>();
  final Map<String, List<OnOffer.SheetSize>> sheets = new HashMap<>();
  final List<SectionBuilder> sections = new ArrayList<>();
  final List<Joint> joints = new ArrayList<>();

  SteelFixture() {
    for (Setting setting : Setting.values()) {
      settings.put(setting, usual(setting));
    }
  }

  private static SettingValue usual(Setting setting) {
    String text = setting.usual();
    boolean none = text.isEmpty();
    double number = Double.NaN;
    Optional<Length> length = Optional.empty();
    switch (setting.type()) {
      case LENGTH_IN -> length = none ? length : Optional.of(Length.ofInches(new BigDecimal(text)));
      case LENGTH_FT -> length = none ? length : Optional.of(Length.ofFeet(new BigDecimal(text)));
      case PERCENT, RATIO, COUNT, MINUTES, DAYS ->
          number = none ? number : Double.parseDouble(text);
      default -> {}
    }
    return new SettingValue(text, setting.type().unit(), number, length, "default");
  }

  SteelFixture set(Setting setting, String text) {
    settings.put(setting, new SettingValue(text, "", Double.NaN, Optional.empty(), "Practice!C2"));
    return this;
  }

  SteelFixture set(Setting setting, double number) {
    settings.put(setting, new SettingValue("?", "", number, Optional.empty(), "Practice!C2"));
    return this;
  }

  SteelFixture set(Setting setting, Length length) {
    SettingValue value = new SettingValue("?", "", Double.NaN, Optional.of(length), "Practice!C2");
    settings.put(setting, value);
    return this;
  }

  SectionBuilder slab(String code, Length length, Length width, Length thickness) {
    SectionBuilder section = new SectionBuilder(code, length, width, thickness);
    sections.add(section);
    return section;
  }

  SteelFixture joint(Joint joint) {
    joints.add(joint);
    return this;
  }

  static Joint joint(JointKind kind, String section, Length length) {
    return new Joint(
        "J1",
        Optional.of(section).filter(code -> !code.isEmpty()),
        Optional.empty(),
        kind,
        length,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false,
        Optional.empty(),
        Length.ZERO,
        Optional.empty(),
        new Place("Joints", 1, -1));
  }

  static BarMat mat(String bar, Length spacing) {
    BarSize size = BarSize.named(bar).orElseThrow();
    return new BarMat(size, spacing, size, spacing);
  }

  static BarRun run(int count, String bar) {
    return new BarRun(count, BarSize.named(bar).orElseThrow());
  }

  Part takeOff() {
    List<Pour> numbered = new ArrayList<>();
    for (int number = 1; number <= pours; number++) {
      numbered.add(
          new Pour(
              number,
              Optional.empty(),
              LocalTime.of(7, 0),
              "3000 psi",
              Placing.CHUTE,
              5,
              "",
              OptionalDouble.empty(),
              Optional.empty(),
              Weather.UNKNOWN));
    }
    Job job =
        new Job(
            "A",
            "",
            "",
            "",
            "",
            units,
            Optional.empty(),
            Optional.empty(),
            numbered,
            sections.stream().map(SectionBuilder::build).toList(),
            List.of(),
            joints,
            List.of(),
            List.of(),
            List.of(),
            new Practice(settings, Map.of(), Map.of()),
            PLACE);
    return SteelTakeoff.of(job, offered());
  }

  private OnOffer offered() {
    return new OnOffer() {
      @Override
      public List<String> sizes(String material) {
        return List.of();
      }

      @Override
      public Optional<Length> longestStock(MaterialKey key) {
        return Optional.ofNullable(stock.get(key.size()));
      }

      @Override
      public Optional<BigDecimal> leastPrice(MaterialKey key) {
        return Optional.empty();
      }

      @Override
      public List<SheetSize> sheets(MaterialKey key) {
        return sheets.getOrDefault(key.size(), List.of());
      }

      @Override
      public boolean has(MaterialKey key) {
        return false;
      }
    };
  }

  /** A section to be; a slab inside, without steel, until told otherwise. */
  static final class SectionBuilder {
    private final String code;
    private final Length thickness;
    Kind kind = Kind.SLAB;
    Where where = Where.INSIDE;
    String mix = "3000 psi";
    int count = 1;
    int pour = 1;
    Shape shape;
    Optional<String> partOf = Optional.empty();
    Optional<Position> position = Optional.empty();
    Length drop = Length.ZERO;
    Optional<Edge> edge = Optional.empty();
    Optional<BarRun> edgeBars = Optional.empty();
    Optional<BarMat> bars = Optional.empty();
    Optional<String> mesh = Optional.empty();
    Sides formed = Sides.ALL;

    private SectionBuilder(String code, Length length, Length width, Length thickness) {
      this.code = code;
      this.shape = new Shape.Rectangle(length, width);
      this.thickness = thickness;
    }

    SectionBuilder bars(String bar, Length spacing) {
      bars = Optional.of(mat(bar, spacing));
      return this;
    }

    SectionBuilder edge(Sides sides, BarRun run) {
      edge = Optional.of(new Edge(Length.ofInches(16), Length.ofInches(12), sides));
      edgeBars = Optional.of(run);
      return this;
    }

    SectionBuilder recessIn(String parent, Length lower) {
      kind = Kind.RECESS;
      partOf = Optional.of(parent);
      drop = lower;
      return this;
    }

    SectionBuilder at(Length x, Length y) {
      position = Optional.of(new Position(x, y));
      return this;
    }

    private Section build() {
      return new Section(
          code,
          kind,
          where,
          mix,
          count,
          pour,
          shape,
          thickness,
          partOf,
          position,
          0,
          true,
          drop,
          edge,
          edgeBars,
          Length.ofInches(4),
          true,
          bars,
          mesh,
          OptionalDouble.empty(),
          formed,
          thickness,
          Finish.TROWEL,
          JointSpacing.BY_RULE,
          OptionalDouble.empty(),
          "",
          PLACE);
    }
  }
}
