package org.pourbook.outline;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** A piece of the plan over which a value changes evenly. */
record Patch(Polygon piece, FlatPlane plane) {

  /** Returns the patches that a plane over a region leaves inside a figure's region. */
  static List<Patch> of(Polygon region, FlatPlane plane, Polygon figure) {
    return Region.pieces(Region.common(region, figure), Region.THINNEST_M).stream()
        .map(piece -> new Patch(piece, plane))
        .toList();
  }

  double areaM2() {
    return piece.getArea();
  }

  /** Returns the value's integral over the piece: exactly area × value at the centroid. */
  double integral() {
    Coordinate centroid = piece.getCentroid().getCoordinate();
    return areaM2() * plane.at(centroid.x, centroid.y);
  }
}
