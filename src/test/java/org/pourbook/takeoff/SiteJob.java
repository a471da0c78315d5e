package org.pourbook.takeoff;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.job.BarMat;
import org.pourbook.job.BarRun;
import org.pourbook.job.Change;
import org.pourbook.job.DepthCheck;
import org.pourbook.job.Edge;
import org.pourbook.job.Extra;
import org.pourbook.job.Finish;
import org.pourbook.job.Job;
import org.pourbook.job.Joint;
import org.pourbook.job.JointSpacing;
import org.pourbook.job.Kind;
import org.pourbook.job.Placing;
import org.pourbook.job.Plate;
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
import org.pourbook.measure.Unit;
import org.pourbook.measure.UnitSystem;
import org.pourbook.problem.Place;

/** A job built for a test: every default as the settings give it. */
final class SiteJob {

  static final Place PLACE = new Place("Sections", 1, 0);

  private UnitSystem units = UnitSystem.FT_IN;
  private final List<Pour> pours = new ArrayList<>();
  private final List<Section> sections = new ArrayList<>();
  private final List<Plate> plates = new ArrayList<>();
  private final List<Joint> joints = new ArrayList<>();
  private final List<Change> changes = new ArrayList<>();
  private final List<Extra> extras = new ArrayList<>();
  private final List<DepthCheck> depthChecks = new ArrayList<>();
  private final Map<Setting, SettingValue> settings = new EnumMap<>(Setting.class);

  SiteJob() {
    for (Setting setting : Setting.values()) {
      if (setting != Setting.ALLOWANCE && setting != Setting.AHEAD_OF_POUR) {
        settings.put(setting, value(setting, setting.usual()));
      }
    }
  }

  SiteJob metric() {
    units = UnitSystem.M;
    return this;
  }

  SiteJob with(Setting setting, String value) {
    settings.put(setting, value(setting, value));
    return this;
  }

  SiteJob with(Pour pour) {
    pours.add(pour);
    return this;
  }

  SiteJob with(SectionBuilder section) {
    sections.add(section.build());
    return this;
  }

  SiteJob with(Plate plate) {
    plates.add(plate);
    return this;
  }

  SiteJob with(Joint joint) {
    joints.add(joint);
    return this;
  }

  SiteJob with(Change change) {
    changes.add(change);
    return this;
  }

  SiteJob with(Extra extra) {
    extras.add(extra);
    return this;
  }

  SiteJob with(DepthCheck check) {
    depthChecks.add(check);
    return this;
  }

  Job build() {
    return new Job(
        "J1",
        "",
        "",
        "",
        "",
        units,
        Optional.empty(),
        Optional.empty(),
        pours.isEmpty() ? List.of(pour(1, Placing.CHUTE)) : pours,
        sections,
        plates,
        joints,
        changes,
        extras,
        depthChecks,
        new Practice(settings, Map.of(), Map.of()),
        PLACE);
  }

  static Pour pour(int number, LocalDate date) {
    Pour plain = pour(number, Placing.CHUTE);
    return new Pour(
        number,
        Optional.of(date),
        plain.start(),
        plain.mix(),
        plain.placing(),
        plain.crew(),
        plain.slump(),
        plain.airPercent(),
        plain.hoseLength(),
        plain.weather());
  }

  static Pour pour(int number, Placing placing) {
    return pour(number, placing, Weather.UNKNOWN);
  }

  static Pour pour(int number, Placing placing, Weather weather) {
    return new Pour(
        number,
        Optional.empty(),
        LocalTime.of(7, 0),
        "3000 psi",
        placing,
        5,
        "4",
        OptionalDouble.empty(),
        Optional.empty(),
        weather);
  }

  /** A value written in US units. */
  private static SettingValue value(Setting setting, String shown) {
    Optional<Length> length =
        switch (setting.type()) {
          case LENGTH_IN -> lengthOf(shown, Length.ofInches(1));
          case LENGTH_FT -> lengthOf(shown, Length.ofFeet(1));
          default -> Optional.empty();
        };
    double number =
        switch (setting.type()) {
          case YES_NO -> shown.equals("yes") ? 1 : 0;
          case VOLUME, RATE -> Unit.YD3.toBase(Double.parseDouble(shown));
          case TEXT, TIME -> Double.NaN;
          default -> shown.isEmpty() ? Double.NaN : Double.parseDouble(shown);
        };
    return new SettingValue(shown, setting.type().unit(), number, length, "default");
  }

  private static Optional<Length> lengthOf(String shown, Length unit) {
    if (shown.isEmpty()) {
      return Optional.empty();
    }
    BigDecimal nanometres = new BigDecimal(shown).multiply(BigDecimal.valueOf(unit.nanometres()));
    return Optional.of(new Length(nanometres.longValueExact()));
  }

  static Length feet(long feet) {
    return Length.ofFeet(feet);
  }

  static Length inches(String inches) {
    return Length.ofInches(new BigDecimal(inches));
  }

  /** A section of a job built for a test; a plain inside slab until told otherwise. */
  static final class SectionBuilder {
    private final String code;
    private Kind kind = Kind.SLAB;
    private Where where = Where.INSIDE;
    private String mix = "3000 psi";
    private int count = 1;
    private int pour = 1;
    private Shape shape = new Shape.Rectangle(feet(36), feet(24));
    private Length thickness = Length.ofInches(4);
    private Optional<String> partOf = Optional.empty();
    private Optional<Position> position = Optional.empty();
    private double fall;
    private boolean baseFollows = true;
    private Length drop = Length.ZERO;
    private Optional<Edge> edge = Optional.empty();
    private Optional<BarMat> bars = Optional.empty();
    private Optional<BarRun> edgeBars = Optional.empty();
    private Length base = Length.ofInches(4);
    private boolean retarder = true;
    private OptionalDouble fiber = OptionalDouble.empty();
    private Sides formed = Sides.ALL;
    private Finish finish = Finish.TROWEL;
    private JointSpacing jointSpacing = JointSpacing.BY_RULE;
    private OptionalDouble waste = OptionalDouble.empty();

    private SectionBuilder(String code) {
      this.code = code;
    }

    static SectionBuilder slab(String code) {
      return new SectionBuilder(code);
    }

    /** A slab or part without base, retarder, forms, finish and joints. */
    static SectionBuilder bare(String code, Kind kind) {
      SectionBuilder section = new SectionBuilder(code);
      section.kind = kind;
      section.base = Length.ZERO;
      section.retarder = false;
      section.formed = Sides.NONE;
      section.finish = Finish.NONE;
      section.jointSpacing = JointSpacing.NONE;
      return section;
    }

    static SectionBuilder recess(String code, String parent, Length drop) {
      SectionBuilder section = new SectionBuilder(code);
      section.kind = Kind.RECESS;
      section.partOf = Optional.of(parent);
      section.drop = drop;
      return section;
    }

    static SectionBuilder thickening(String code, String parent) {
      SectionBuilder section = bare(code, Kind.THICKENING);
      section.partOf = Optional.of(parent);
      return section;
    }

    SectionBuilder where(Where place) {
      where = place;
      return this;
    }

    SectionBuilder mix(String name) {
      mix = name;
      return this;
    }

    SectionBuilder count(int times) {
      count = times;
      return this;
    }

    SectionBuilder pour(int number) {
      pour = number;
      return this;
    }

    SectionBuilder size(Length length, Length width) {
      return shape(new Shape.Rectangle(length, width));
    }

    SectionBuilder shape(Shape plan) {
      shape = plan;
      return this;
    }

    SectionBuilder thick(String inches) {
      return thick(inches(inches));
    }

    SectionBuilder thick(Length t) {
      thickness = t;
      return this;
    }

    SectionBuilder at(Length x, Length y) {
      position = Optional.of(new Position(x, y));
      return this;
    }

    SectionBuilder fall(double slope, boolean follows) {
      fall = slope;
      baseFollows = follows;
      return this;
    }

    SectionBuilder edge(String depthInches, String widthInches, Sides sides) {
      edge = Optional.of(new Edge(inches(depthInches), inches(widthInches), sides));
      return this;
    }

    /** Bars both ways at one spacing. */
    SectionBuilder bars(String size, String spacingInches) {
      BarSize bar = BarSize.named(size).orElseThrow();
      bars = Optional.of(new BarMat(bar, inches(spacingInches), bar, inches(spacingInches)));
      return this;
    }

    SectionBuilder edgeBars(int count, String size) {
      edgeBars = Optional.of(new BarRun(count, BarSize.named(size).orElseThrow()));
      return this;
    }

    SectionBuilder base(String inches) {
      base = inches(inches);
      return this;
    }

    SectionBuilder retarder(boolean yes) {
      retarder = yes;
      return this;
    }

    SectionBuilder fiber(double kgPerM3) {
      fiber = OptionalDouble.of(kgPerM3);
      return this;
    }

    SectionBuilder formed(Sides sides) {
      formed = sides;
      return this;
    }

    SectionBuilder finish(Finish top) {
      finish = top;
      return this;
    }

    SectionBuilder joints(JointSpacing spacing) {
      jointSpacing = spacing;
      return this;
    }

    SectionBuilder waste(double percent) {
      waste = OptionalDouble.of(percent);
      return this;
    }

    Section build() {
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
          fall,
          baseFollows,
          drop,
          edge,
          edgeBars,
          base,
          retarder,
          bars,
          Optional.empty(),
          fiber,
          formed,
          kind == Kind.RECESS ? drop : edge.map(Edge::depth).orElse(thickness),
          finish,
          jointSpacing,
          waste,
          "",
          PLACE);
    }
  }
}
