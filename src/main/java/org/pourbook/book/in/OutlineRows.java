package org.pourbook.book.in;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.pourbook.book.InputSheet;
import org.pourbook.book.in.Table.TableRow;
import org.pourbook.job.Shape;
import org.pourbook.job.Shape.SideMark;
import org.pourbook.measure.Length;
import org.pourbook.measure.NumberText;
import org.pourbook.outline.Outlines;
import org.pourbook.outline.Outlines.Fault;

/** The outlines of a job's sections. */
final class OutlineRows {

  private final Map<String, Written> bySection = new LinkedHashMap<>();

  private record Corner(BigDecimal order, Length x, Length y, SideMark mark, TableRow row) {
    String name() {
      return NumberText.text(order);
    }
  }

  /** The rows of one section; not sound when a cell of them was refused. */
  private static final class Written {
    private final Map<Integer, List<Corner>> rings = new TreeMap<>();
    private boolean sound = true;
  }

  OutlineRows(JobDraft job) {
    for (TableRow row : job.rows(InputSheet.OUTLINES)) {
      read(job, row);
    }
  }

  private void read(JobDraft job, TableRow row) {
    Cells cells = job.cells(row);
    Optional<String> section = cells.code("Section");
    int ring = cells.count("Ring").orElse(1);
    Optional<BigDecimal> order = cells.number("Point");
    Optional<Length> x = cells.feet("X");
    Optional<Length> y = cells.feet("Y");
    SideMark mark =
        cells.choice("Side", SideMark.values(), SideMark::label).orElse(SideMark.BY_SECTION);
    Written written =
        bySection.computeIfAbsent(
            section.orElse(CellWords.of(row.cell("Section"))), s -> new Written());
    List<Corner> corners = written.rings.computeIfAbsent(ring, r -> new ArrayList<>());
    BigDecimal place = order.orElse(BigDecimal.valueOf(corners.size() + 1L));
    if (corners.stream().anyMatch(corner -> corner.order().compareTo(place) == 0)) {
      cells.refuse("Point", "each point of a ring once");
    }
    if (job.accepts(cells)) {
      corners.add(new Corner(place, x.orElse(Length.ZERO), y.orElse(Length.ZERO), mark, row));
    } else {
      written.sound = false;
    }
  }

  boolean has(String section) {
    return bySection.containsKey(section);
  }

  /** Returns the sections that have an outline, each with its first row. */
  Map<String, TableRow> firstRows() {
    Map<String, TableRow> first = new LinkedHashMap<>();
    bySection.forEach(
        (section, written) ->
            written.rings.values().stream()
                .flatMap(List::stream)
                .map(Corner::row)
                .findFirst()
                .ifPresent(row -> first.put(section, row)));
    return first;
  }

  /** Returns a section's outline; empty when it has none that is sound. */
  Optional<Shape.Outline> of(String section, JobDraft job) {
    Written written = bySection.get(section);
    if (written == null || !written.sound) {
      return Optional.empty();
    }
    written.rings.values().forEach(corners -> corners.sort(Comparator.comparing(Corner::order)));
    Shape.Outline outline = outline(written);
    Optional<Fault> fault = Outlines.check(outline);
    fault.ifPresent(found -> refuse(found, written, job));
    return fault.isPresent() ? Optional.empty() : Optional.of(outline);
  }

  private static Shape.Outline outline(Written written) {
    List<Shape.Ring> rings = new ArrayList<>();
    Set<String> names = new HashSet<>();
    written.rings.forEach(
        (number, corners) -> {
          boolean taken = corners.stream().anyMatch(corner -> names.contains(corner.name()));
          List<Shape.Point> points = new ArrayList<>();
          for (Corner corner : corners) {
            String name = taken ? number + "." + corner.name() : corner.name();
            points.add(new Shape.Point(name, corner.x(), corner.y(), corner.mark()));
            names.add(name);
          }
          rings.add(new Shape.Ring(points));
        });
    return new Shape.Outline(rings);
  }

  private static void refuse(Fault fault, Written written, JobDraft job) {
    List<Corner> corners = List.copyOf(written.rings.values()).get(fault.ring());
    TableRow row = corners.get(Math.max(fault.point(), 0)).row();
    job.refuse(row.place("X"), fault.message(), "an outline whose sides do not cross or touch");
  }

  /** Refuses sides that are turned down where the section has no turned-down edge. */
  void refuseTurnedDown(String section, JobDraft job) {
    Written written = bySection.get(section);
    if (written == null) {
      return;
    }
    written.rings.values().stream()
        .flatMap(List::stream)
        .filter(corner -> corner.mark() == SideMark.TURNED_DOWN)
        .findFirst()
        .ifPresent(
            corner ->
                job.refuse(
                    corner.row().place("Side"),
                    "turned down",
                    "an Edge depth for section " + section));
  }
}
