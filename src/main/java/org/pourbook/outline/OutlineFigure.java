package org.pourbook.outline;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;

/** A polygon with openings. */
record OutlineFigure(List<FigureSide> sides, Polygon polygon, double areaM2) implements Figure {

  /**
   * Returns the figure of an outline.
   *
   * @throws IllegalArgumentException where {@link Outlines#check} finds a fault
   */
  static OutlineFigure of(Shape.Outline outline, Sides formed, Sides turnedDown) {
    Outlines.check(outline)
        .ifPresent(
            fault -> {
              throw new IllegalArgumentException(fault.message());
            });
    List<FigureSide> sides = OutlineSides.of(outline, formed, turnedDown);
    return new OutlineFigure(sides, Region.polygon(sides), areaM2(outline));
  }

  private static double areaM2(Shape.Outline outline) {
    BigInteger twice = BigInteger.ZERO;
    for (int ring = 0; ring < outline.rings().size(); ring++) {
      BigInteger area = ExactPlane.twiceArea(outline.rings().get(ring).points()).abs();
      twice = ring == 0 ? area : twice.subtract(area);
    }
    return new BigDecimal(twice, 18).doubleValue() / 2;
  }

  @Override
  public double perimeterM() {
    return sides.stream().mapToDouble(side -> side.length().metres()).sum();
  }

  @Override
  public double movedInAreaM2(double distanceM, SideChoice which) {
    return Region.areaM2(MovedSides.moved(polygon, sides, distanceM, which));
  }

  @Override
  public double movedOutAreaM2(double distanceM, SideChoice which) {
    return movedInAreaM2(-distanceM, which);
  }

  @Override
  public List<Chord> lines(boolean along, double spacingM, double insetM) {
    Geometry inside = MovedSides.moved(polygon, sides, insetM, side -> true);
    List<Polygon> pieces = Region.pieces(inside, Region.THINNEST_M);
    if (pieces.isEmpty()) {
      return List.of();
    }
    Envelope extent = new Envelope();
    pieces.forEach(piece -> extent.expandToInclude(piece.getEnvelopeInternal()));
    ScanLine scan = ScanLine.of(pieces, along);
    double first = along ? extent.getMinY() : extent.getMinX();
    double last = along ? extent.getMaxY() : extent.getMaxX();
    return SpacedLines.between(first, last, spacingM).stream()
        .flatMap(offset -> scan.at(offset).stream())
        .toList();
  }

  @Override
  public double extentXM() {
    return polygon.getEnvelopeInternal().getWidth();
  }

  @Override
  public double extentYM() {
    return polygon.getEnvelopeInternal().getHeight();
  }
}
