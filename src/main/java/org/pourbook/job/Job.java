package org.pourbook.job;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.pourbook.measure.UnitSystem;
import org.pourbook.problem.Place;

/**
 * A sound job: everything the builder wrote, checked, with every default filled in.
 *
 * @param deliverTo empty for {@code site}, else the name shared by jobs whose orders may be pooled
 * @param taxPercent overrides the supplier's
 * @param pours at least one, by number; every section's pour is among them
 */
public record Job(
    String code,
    String description,
    String customer,
    String site,
    String notes,
    UnitSystem units,
    Optional<String> deliverTo,
    Optional<BigDecimal> taxPercent,
    List<Pour> pours,
    List<Section> sections,
    List<Plate> plates,
    List<Joint> joints,
    List<Change> changes,
    List<Extra> extras,
    List<DepthCheck> depthChecks,
    Practice practice,
    Place place) {
  public Job {
    pours = List.copyOf(pours);
    sections = List.copyOf(sections);
    plates = List.copyOf(plates);
    joints = List.copyOf(joints);
    changes = List.copyOf(changes);
    extras = List.copyOf(extras);
    depthChecks = List.copyOf(depthChecks);
  }

  /** Returns the section of that code. */
  public Section section(String code) {
    return sections.stream()
        .filter(section -> section.code().equals(code))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no section " + code));
  }

  /** Returns the parts (recesses, thickenings) of a section. */
  public List<Section> partsOf(Section parent) {
    return sections.stream()
        .filter(section -> section.partOf().equals(Optional.of(parent.code())))
        .toList();
  }

  /** Returns how many there are of a section in all: its count, times its parent's for a part. */
  public int timesOf(Section section) {
    return section.partOf().map(parent -> section(parent).count()).orElse(1) * section.count();
  }

  public Pour pour(int number) {
    return pours.stream()
        .filter(pour -> pour.number() == number)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no pour " + number));
  }

  /** Returns the first date of any pour. */
  public Optional<LocalDate> firstDate() {
    return pours.stream().map(Pour::date).flatMap(Optional::stream).min(Comparator.naturalOrder());
  }

  public List<Change> openChanges() {
    return changes.stream().filter(change -> change.state() == ChangeState.OPEN).toList();
  }
}
