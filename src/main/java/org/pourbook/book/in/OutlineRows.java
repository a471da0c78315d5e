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
import org.pourbook.problem.Place;

/** The outlines of a job's sections. */
final class OutlineRows {

  private final Map<String, Written> bySection = new LinkedHashMap<>();

  /** An outline with the place of each of its points, ring by ring. */
  record Placed(Shape.Outline shape, List<List<Place>> places) {}

  private record Corner(BigDecimal order, Length x, Length y, SideMark mark, TableRow row) {}

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
  Optional<Placed> of(String section, JobDraft job) {
    Written written = bySection.get(section);
    if (written == null || !written.sound || !hasEnoughPoints(written, job)) {
      return Optional.empty();
    }
    List<Shape.Ring> rings = new ArrayList<>();
    List<List<Place>> places = new ArrayList<>();
    Set<String> names = new HashSet<>();
    written.rings.forEach(
        (number, corners) -> {
          corners.sort(Comparator.comparing(Corner::order));
          List<String> own = corners.stream().map(c -> NumberText.text(c.order())).toList();
          boolean taken = own.stream().anyMatch(names::contains);
          List<Shape.Point> points = new ArrayList<>();
          for (int i = 0; i < corners.size(); i++) {
            Corner corner = corners.get(i);
            String name = taken ? number + "." + own.get(i) : own.get(i);
            points.add(new Shape.Point(name, corner.x(), corner.y(), corner.mark()));
          }
          names.addAll(points.stream().map(Shape.Point::name).toList());
          rings.add(new Shape.Ring(points));
          places.add(corners.stream().map(corner -> corner.row().place("X")).toList());
        });
    return Optional.of(new Placed(new Shape.Outline(rings), places));
  }

  private static boolean hasEnoughPoints(Written written, JobDraft job) {
    for (List<Corner> corners : written.rings.values()) {
      if (corners.size() < 3) {
        Corner last = corners.get(corners.size() - 1);
        job.refuse(
            last.row().place("Point"),
            corners.size() + " points",
            "a ring of three points or more");
        return false;
      }
    }
    return true;
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
