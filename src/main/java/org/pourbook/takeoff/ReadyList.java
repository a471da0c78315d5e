package org.pourbook.takeoff;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.pourbook.job.Change;
import org.pourbook.job.Extra;
import org.pourbook.job.ExtraKind;
import org.pourbook.job.Job;
import org.pourbook.job.Pour;
import org.pourbook.measure.Unit;
import org.pourbook.takeoff.rule.ControlJoints;

/** What must be on site or checked before the first truck is discharged (READY-1). */
final class ReadyList {

  private static final String RULE = "READY-1";

  /** On every list. */
  private static final List<ReadyItem> FIXED =
      List.of(
          fixed("Inspection booked and passed", "nothing is poured before"),
          fixed("Call-before-you-dig ticket", "stakes and edges go into the ground"),
          fixed("Plumbing tested, sleeves taped", "cannot be reached afterwards"),
          fixed("Ground bar tied and left out", "cannot be tied afterwards"),
          fixed("Bolts laid out and counted", "set while the concrete is soft"),
          fixed(
              "Truck and pump reach the forms; washout place", "a loaded truck needs firm ground"),
          fixed("Vibrator, screed, floats, saw with blade, spare power", "tried the day before"),
          fixed("Hoses, water", "for tools, curing and eyes"),
          fixed("Sheeting and blankets", "rain, sun and frost"),
          fixed("Plant's phone and cut-off time", "the last load is confirmed by phone"),
          fixed("Boots, gloves, eye wash", "wet concrete burns"),
          fixed("Bar caps", "29 CFR 1926.701(b)"));

  /** What a job holds that the crew counts on the day. */
  private static final Set<Material> COUNTED =
      Set.of(
          Material.ANCHOR_BOLT,
          Material.NUT,
          Material.PLATE_WASHER,
          Material.DOWEL,
          Material.DOWEL_SLEEVE,
          Material.BAR_CAP,
          Material.BAR_SUPPORT,
          Material.FORM_TUBE,
          Material.JOINT_FILLER,
          Material.BAGGED_CONCRETE,
          Material.FIBER,
          Material.CURING_COMPOUND,
          Material.PUMP);

  private ReadyList() {}

  private static ReadyItem fixed(String what, String why) {
    return new ReadyItem(what, "", why);
  }

  /**
   * Returns the list of a job: open changes, the fixed lines, then what the job holds.
   *
   * @param quantities of all families
   */
  static Part of(Job job, List<Quantity> quantities) {
    Part part = new Part();
    for (Change change : job.openChanges()) {
      String why = "open change" + change.section().map(code -> " of " + code).orElse("");
      part.add(new ReadyItem(change.code() + ": " + change.what(), "", why));
    }
    FIXED.forEach(part::add);
    job.pours().forEach(pour -> part.add(people(pour)));
    if (quantities.stream().anyMatch(q -> isOf(q, Material.SAW_CUTTING))) {
      part.add(new ReadyItem("Saw the control joints", "", ControlJoints.sawing()));
    }
    held(quantities).forEach(part::add);
    for (Extra extra : job.extras()) {
      if (extra.kind() == ExtraKind.SET_IN || extra.kind() == ExtraKind.CHECK) {
        part.add(
            new ReadyItem(
                new MaterialKey(extra.what(), extra.size()).toString(),
                Working.number(extra.quantity()) + " " + extra.unit(),
                extra.notes().isEmpty() ? extra.kind().label() : extra.notes()));
      }
    }
    return part;
  }

  private static ReadyItem people(Pour pour) {
    return new ReadyItem(
        "People here against crew needed, pour " + pour.number(),
        pour.crew() + " people",
        "placing times are for this crew");
  }

  private static List<ReadyItem> held(List<Quantity> quantities) {
    Map<MaterialKey, List<Quantity>> byKey =
        quantities.stream()
            .filter(q -> !q.rule().equals(ExtrasTakeoff.RULE) && isCounted(q))
            .collect(
                Collectors.groupingBy(
                    q -> q.material().orElseThrow(), TreeMap::new, Collectors.toList()));
    return byKey.entrySet().stream().map(e -> held(e.getKey(), e.getValue())).toList();
  }

  private static boolean isOf(Quantity quantity, Material material) {
    return quantity.material().filter(key -> key.material().equals(material.label())).isPresent();
  }

  private static boolean isCounted(Quantity quantity) {
    return quantity
        .material()
        .flatMap(key -> Material.named(key.material()))
        .filter(COUNTED::contains)
        .isPresent();
  }

  private static ReadyItem held(MaterialKey key, List<Quantity> rows) {
    double amount = rows.stream().mapToDouble(Quantity::amount).sum();
    Unit unit = rows.get(0).unit();
    String rules =
        rows.stream().map(Quantity::rule).distinct().sorted().collect(Collectors.joining(", "));
    return new ReadyItem(
        key.toString(), Working.number(amount) + " " + unit.label(), RULE + ", " + rules);
  }
}
