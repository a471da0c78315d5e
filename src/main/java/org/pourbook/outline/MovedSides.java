package org.pourbook.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.pourbook.outline.Figure.SideChoice;

/**
 * Moves chosen sides of an outline, mitred. A moved side sweeps a strip: the rectangle on it, with
 * the kite up to the mitre where two moved sides turn away from the strip. Towards a side that
 * stays, the strip ends at that side's line; where that would lie further off than {@link
 * #FARTHEST_MITRE} strip widths (two short sides of a bay), it ends square. Only what hangs
 * together with the side is swept, not what lies beyond a gap.
 */
final class MovedSides {

  /** The strip's end towards a side that stays, in widths of the strip. */
  private static final double FARTHEST_MITRE = 5;

  private final Polygon polygon;
  private final List<FigureSide> sides;
  private final SideChoice which;
  private final double distanceM;
  private final boolean inwards;

  private MovedSides(
      Polygon polygon,
      List<FigureSide> sides,
      SideChoice which,
      double distanceM,
      boolean inwards) {
    this.polygon = polygon;
    this.sides = sides;
    this.which = which;
    this.distanceM = distanceM;
    this.inwards = inwards;
  }

  /**
   * Returns what is left of a polygon when the chosen of its sides move in by a distance, or out
   * where the distance is below zero.
   */
  static Geometry moved(Polygon polygon, List<FigureSide> sides, double inM, SideChoice which) {
    if (inM == 0) {
      return polygon;
    }
    MovedSides move = new MovedSides(polygon, sides, which, Math.abs(inM), inM > 0);
    Geometry swept = Region.union(move.swept());
    return move.inwards ? Region.minus(polygon, swept) : Region.union(polygon, swept);
  }

  private List<Geometry> swept() {
    boolean all = sides.stream().allMatch(which::test);
    List<Geometry> swept = new ArrayList<>();
    for (int i = 0; i < sides.size(); i++) {
      FigureSide side = sides.get(i);
      if (which.test(side)) {
        List<Geometry> strip = strip(side, before(i), after(i));
        // Beyond a gap, the gap's other side sweeps the same when all sides move.
        swept.addAll(all ? strip : hangingTogether(side, Region.union(strip)));
      }
    }
    return swept;
  }

  private List<Polygon> hangingTogether(FigureSide side, Geometry strip) {
    Geometry part = inwards ? Region.common(strip, polygon) : Region.minus(strip, polygon);
    Geometry line = Region.segment(start(side), end(side));
    return Region.pieces(part, Region.THINNEST_M).stream()
        .filter(piece -> piece.isWithinDistance(line, Region.THINNEST_M))
        .toList();
  }

  /** Returns the pieces of what a side sweeps. */
  private List<Geometry> strip(FigureSide side, FigureSide before, FigureSide after) {
    Coordinate from = start(side);
    Coordinate to = end(side);
    Coordinate across = across(side);
    Geometry strip =
        Region.polygon(from, to, sum(to, across, distanceM), sum(from, across, distanceM));
    if (!which.test(before)) {
      strip = endedAt(strip, from, across, direction(before), reversed(direction(side)));
    }
    if (!which.test(after)) {
      return List.of(endedAt(strip, to, across, direction(after), direction(side)));
    }
    List<Geometry> pieces = new ArrayList<>(List.of(strip));
    mitre(to, side, after).ifPresent(pieces::add);
    return pieces;
  }

  /** Returns a strip that ends at the line of the neighbour that stays, not square. */
  private Geometry endedAt(
      Geometry strip,
      Coordinate corner,
      Coordinate across,
      Coordinate neighbour,
      Coordinate onwards) {
    double rise = dot(across, neighbour);
    if (Math.abs(rise) * FARTHEST_MITRE < 1) {
      return strip;
    }
    Coordinate mitre = sum(corner, neighbour, distanceM / rise);
    double ahead = dot(neighbour, onwards) / rise;
    if (Math.abs(ahead) * distanceM < Region.THINNEST_M) {
      return strip;
    }
    Polygon end = Region.polygon(corner, sum(corner, across, distanceM), mitre);
    return ahead > 0 ? Region.union(strip, end) : Region.minus(strip, end);
  }

  /**
   * Returns what fills the gap between the strips of two moved sides, the kite up to the mitre;
   * empty where they meet. Between two sides in one line it is a scrap over both strips, or the
   * rounding of their directions would leave a crack.
   */
  private Optional<Geometry> mitre(Coordinate corner, FigureSide side, FigureSide after) {
    Coordinate across = across(side);
    Coordinate acrossNext = across(after);
    double turn = dot(across, direction(after)) * distanceM;
    if (turn > Region.THINNEST_M) {
      return Optional.empty();
    }
    Coordinate top = sum(corner, across, distanceM);
    if (turn > -Region.THINNEST_M) {
      Coordinate way = direction(side);
      double overlap = 2 * Region.THINNEST_M;
      return Optional.of(
          Region.polygon(
              sum(corner, way, -overlap),
              sum(corner, way, overlap),
              sum(top, way, overlap),
              sum(top, way, -overlap)));
    }
    double reach = distanceM / (1 + dot(across, acrossNext));
    Coordinate mitre = sum(sum(corner, across, reach), acrossNext, reach);
    return Optional.of(Region.polygon(corner, top, mitre, sum(corner, acrossNext, distanceM)));
  }

  private FigureSide before(int i) {
    int last = i;
    while (last + 1 < sides.size() && sides.get(last + 1).ring() == sides.get(i).ring()) {
      last++;
    }
    boolean first = i == 0 || sides.get(i - 1).ring() != sides.get(i).ring();
    return sides.get(first ? last : i - 1);
  }

  private FigureSide after(int i) {
    int first = i;
    while (first > 0 && sides.get(first - 1).ring() == sides.get(i).ring()) {
      first--;
    }
    boolean last = i + 1 == sides.size() || sides.get(i + 1).ring() != sides.get(i).ring();
    return sides.get(last ? first : i + 1);
  }

  private static Coordinate start(FigureSide side) {
    return new Coordinate(side.x1M(), side.y1M());
  }

  private static Coordinate end(FigureSide side) {
    return new Coordinate(side.x2M(), side.y2M());
  }

  private static Coordinate direction(FigureSide side) {
    double dx = side.x2M() - side.x1M();
    double dy = side.y2M() - side.y1M();
    double length = Math.sqrt(dx * dx + dy * dy);
    return new Coordinate(dx / length, dy / length);
  }

  /** The way a side moves: left of it inwards, right of it outwards. */
  private Coordinate across(FigureSide side) {
    Coordinate u = direction(side);
    return inwards ? new Coordinate(-u.y, u.x) : new Coordinate(u.y, -u.x);
  }

  private static Coordinate reversed(Coordinate way) {
    return new Coordinate(-way.x, -way.y);
  }

  private static Coordinate sum(Coordinate from, Coordinate way, double distance) {
    return new Coordinate(from.x + way.x * distance, from.y + way.y * distance);
  }

  private static double dot(Coordinate a, Coordinate b) {
    return a.x * b.x + a.y * b.y;
  }
}
