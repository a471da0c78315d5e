package org.pourbook.book.in;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.pourbook.book.InputSheet;
import org.pourbook.book.in.Table.TableRow;
import org.pourbook.job.Placing;
import org.pourbook.job.Pour;
import org.pourbook.job.Practice;
import org.pourbook.job.Setting;
import org.pourbook.job.Weather;
import org.pourbook.measure.TimeText;
import org.pourbook.problem.Place;
import org.pourbook.takeoff.Material;
import org.pourbook.takeoff.OnOffer;

/** The pours of a job: its rows of Pours over what Jobs says; others as sections name them. */
final class PourRows {

  /** The crew that the placing rates are given for (POUR-2). */
  private static final int USUAL_CREW = 5;

  private final JobDraft job;
  private final Optional<LocalDate> date;
  private final Placing placing;
  private final Weather weather;
  private final LocalTime start;
  private final String mix;
  private final Map<Integer, Pour> pours = new TreeMap<>();
  private boolean mixMissed;

  PourRows(JobDraft job, Practice practice, OnOffer onOffer) {
    this.job = job;
    Cells cells = job.cells();
    this.date = cells.date("Pour date");
    this.placing = cells.choice("Placing", Placing.values(), Placing::label).orElse(Placing.CHUTE);
    this.weather = weather(cells, Weather.UNKNOWN);
    this.mix = cells.code("Mix").or(() -> onlyMix(onOffer)).orElse("");
    this.start = TimeText.read(practice.text(Setting.START)).orElseThrow();
    job.accepts(cells);
    job.rows(InputSheet.POURS).forEach(this::read);
    if (pours.isEmpty()) {
      pours.put(1, usual(1));
    }
  }

  private static Optional<String> onlyMix(OnOffer onOffer) {
    List<String> sizes =
        onOffer.sizes(Material.CONCRETE.label()).stream().filter(size -> !size.isEmpty()).toList();
    return sizes.size() == 1 ? Optional.of(sizes.get(0)) : Optional.empty();
  }

  private Pour usual(int number) {
    return new Pour(
        number,
        date,
        start,
        mix,
        placing,
        USUAL_CREW,
        "",
        OptionalDouble.empty(),
        Optional.empty(),
        weather);
  }

  private void read(TableRow row) {
    Cells cells = job.cells(row);
    Optional<Integer> number = cells.count("Pour");
    Pour pour =
        new Pour(
            number.orElse(1),
            cells.date("Date").or(() -> date),
            cells.time("Start").orElse(start),
            cells.code("Mix").orElse(mix),
            cells.choice("Placing", Placing.values(), Placing::label).orElse(placing),
            cells.count("Crew").orElse(USUAL_CREW),
            cells.textOrEmpty("Slump"),
            percent(cells, "Air %", OptionalDouble.empty()),
            cells.feet("Hose length"),
            weather(cells, weather));
    if (number.isPresent() && pours.containsKey(number.get())) {
      cells.refuse("Pour", "one row a pour");
    }
    if (job.accepts(cells)) {
      pours.put(pour.number(), pour);
    }
  }

  private static Weather weather(Cells cells, Weather otherwise) {
    boolean metric = cells.units().isMetric();
    return new Weather(
        fahrenheit(cells, "Air temp", otherwise.airF(), metric),
        percent(cells, "Humidity", otherwise.humidityPercent()),
        mph(cells, otherwise.windMph(), metric),
        fahrenheit(cells, "Concrete temp", otherwise.concreteF(), metric),
        percent(cells, "Rain chance", otherwise.rainPercent()));
  }

  private static OptionalDouble fahrenheit(
      Cells cells, String heading, OptionalDouble otherwise, boolean metric) {
    OptionalDouble degrees = cells.decimal(heading);
    if (degrees.isEmpty()) {
      return otherwise;
    }
    return metric ? OptionalDouble.of(degrees.getAsDouble() * 9 / 5 + 32) : degrees;
  }

  private static OptionalDouble mph(Cells cells, OptionalDouble otherwise, boolean metric) {
    OptionalDouble wind = cells.decimal("Wind");
    if (wind.isEmpty()) {
      return otherwise;
    }
    return metric ? OptionalDouble.of(wind.getAsDouble() / 1.609344) : wind;
  }

  private static OptionalDouble percent(Cells cells, String heading, OptionalDouble otherwise) {
    return cells
        .percent(heading)
        .map(percent -> OptionalDouble.of(percent.doubleValue()))
        .orElse(otherwise);
  }

  /** Returns a pour that a row names; one that Pours lacks is as Jobs says, which is noted. */
  Pour named(int number, Place place) {
    Pour known = pours.get(number);
    if (known != null) {
      return known;
    }
    if (!job.isRefused()) {
      job.note(place, "pour " + number, "a pour of sheet Pours; taken as sheet Jobs says");
    }
    Pour usual = usual(number);
    pours.put(number, usual);
    return usual;
  }

  /** Returns the mix of a pour, and leaves the job out where none is written or on offer alone. */
  String mixOf(Pour pour) {
    if (pour.mix().isEmpty() && !mixMissed) {
      mixMissed = true;
      job.refuse(
          job.cells().place("Mix"),
          "blank",
          "a mix such as 3000 psi, since the price book does not have just one");
    }
    return pour.mix();
  }

  List<Pour> pours() {
    return List.copyOf(pours.values());
  }
}
