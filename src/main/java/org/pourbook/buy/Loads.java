package org.pourbook.buy;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.pourbook.job.Job;
import org.pourbook.job.Pour;
import org.pourbook.job.Setting;
import org.pourbook.takeoff.TakeOff;
import org.pourbook.takeoff.rule.PlacingTime;

/** The truckloads of the concrete bought, with their times (POUR-2, POUR-3). */
final class Loads {

  private static final String LAST_LOAD = "confirm by phone before batching";

  private final List<Load> loads = new ArrayList<>();
  private final List<Bought.BuyCaution> cautions = new ArrayList<>();
  private final Map<String, TakeOff> takeOffs = new HashMap<>();

  /** Minutes from a pour's start until its last truck so far is empty, by job and pour. */
  private final Map<String, Double> busy = new HashMap<>();

  private Loads(List<TakeOff> takeOffs) {
    takeOffs.forEach(takeOff -> this.takeOffs.put(takeOff.job().code(), takeOff));
  }

  /** Loads, and the cautions that their times and sizes draw. */
  record Result(List<Load> loads, List<Bought.BuyCaution> cautions) {}

  /** Returns the loads of all pours, by job in the batch's order and pour. */
  static Result of(List<TakeOff> takeOffs, List<Choice> choices) {
    Loads all = new Loads(takeOffs);
    for (Choice choice : choices) {
      Supplier supplier =
          choice
              .option()
              .supplier()
              .orElseGet(() -> Supplier.named("", choice.lot().portions().get(0).job().place()));
      choice.option().pours().forEach(pour -> all.add(pour, supplier));
    }
    List<String> jobs = takeOffs.stream().map(takeOff -> takeOff.job().code()).toList();
    Map<String, Integer> order = new HashMap<>();
    jobs.forEach(job -> order.putIfAbsent(job, order.size()));
    all.loads.sort(
        Comparator.comparing((Load load) -> order.getOrDefault(load.job(), jobs.size()))
            .thenComparing(Load::pour));
    return new Result(List.copyOf(all.loads), List.copyOf(all.cautions));
  }

  private void add(PourOrder order, Supplier supplier) {
    Job job = order.portion().job();
    Pour pour = job.pour(order.portion().pour());
    PlacingTimes times = PlacingTimes.of(order.portion(), supplier);
    String key = job.code() + "|" + pour.number();
    List<Double> volumes = order.plan().loadsM3();
    List<String> covers = covers(order);
    if (order.portion().before() > 0) {
      busy.merge(key, times.minutesFor(order.portion().before()), Math::max);
    }
    for (int i = 0; i < volumes.size(); i++) {
      double volume = volumes.get(i);
      double minutes = busy.getOrDefault(key, 0.0);
      int number = loadsBefore(order, supplier) + i + 1;
      loads.add(load(order, i, number, pour, Math.round(minutes), covers.get(i)));
      busy.put(key, minutes + times.minutesFor(volume));
    }
    tellAge(order, times);
    tellSmallRemainder(order);
  }

  /** Returns how many loads an earlier order brings, so that no number is given twice. */
  private static int loadsBefore(PourOrder order, Supplier supplier) {
    double truckM3 =
        supplier.loadSizeM3().orElse(order.portion().job().practice().number(Setting.LOAD_SIZE));
    return order.portion().before() > 0
        ? Packs.up(order.portion().before(), truckM3).intValueExact()
        : 0;
  }

  private static Load load(
      PourOrder order, int i, int number, Pour pour, long minutes, String covers) {
    LocalTime arrives = pour.start().plusMinutes(minutes);
    boolean last = i == order.plan().loadsM3().size() - 1;
    return new Load(
        order.portion().job().code(),
        pour.number(),
        mix(order),
        number,
        order.plan().loadsM3().get(i),
        arrives,
        pour.date().map(date -> date.atTime(pour.start()).plusMinutes(minutes)),
        covers,
        last ? LAST_LOAD : "");
  }

  private static String mix(PourOrder order) {
    return order.portion().concrete().map(need -> need.mix()).orElse("");
  }

  private List<String> covers(PourOrder order) {
    TakeOff takeOff = takeOffs.get(order.portion().job().code());
    if (takeOff == null) {
      throw new IllegalStateException("no take-off of " + order.portion().job().code());
    }
    return LoadCovers.of(
        takeOff,
        order.portion().pour(),
        mix(order),
        order.portion().before(),
        order.plan().loadsM3());
  }

  private void tellAge(PourOrder order, PlacingTimes times) {
    double largest = order.plan().loadsM3().stream().mapToDouble(v -> v).max().orElse(0);
    double age = times.ageMinutes(largest);
    if (PlacingTime.isTooOld(
        times.minutesAway(), times.minutesFor(largest), times.limitMinutes())) {
      tell(
          order,
          "Concrete is "
              + Math.round(age)
              + " min old at the end of discharge ("
              + Math.round(times.minutesAway())
              + " min away and "
              + Math.round(times.minutesFor(largest))
              + " min to place); the limit is "
              + Math.round(times.limitMinutes())
              + " min. Use more hands or another plant.",
          "POUR-3");
    }
  }

  /** Tells a remainder under the least load, with the allowance left without it (CON-8). */
  private void tellSmallRemainder(PourOrder order) {
    List<Double> volumes = order.plan().loadsM3();
    Job job = order.portion().job();
    double last = volumes.isEmpty() ? 0 : volumes.get(volumes.size() - 1);
    double least = job.practice().number(Setting.LEAST_LOAD);
    if (volumes.size() < 2 || Packs.exact(least - last).signum() <= 0) {
      return;
    }
    double net = order.portion().net();
    double left = ((order.plan().orderM3() - last) / net - 1) * 100;
    tell(
        order,
        "The last load is only "
            + OrderNotes.volume(last, job)
            + "; without it "
            + Packs.exact(Math.round(left * 10) / 10.0).toPlainString()
            + " % of allowance would be left.",
        "CON-8");
  }

  private void tell(PourOrder order, String says, String rule) {
    cautions.add(
        new Bought.BuyCaution(
            order.portion().job().code(),
            "",
            "Pour " + order.portion().pour() + ": " + says,
            rule));
  }
}
