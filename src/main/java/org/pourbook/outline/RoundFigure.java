package org.pourbook.outline;

import java.util.List;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;

/** A circle in closed form, touching both axes: its centre lies at radius, radius. */
record RoundFigure(double radiusM, List<FigureSide> sides) implements Figure {

  private static final String NAME = "round";

  static RoundFigure of(Shape.Round shape, Sides formed, Sides turnedDown) {
    double r = shape.diameter().metres() / 2;
    Length round = Length.ofMetres(2 * Math.PI * r);
    FigureSide side =
        new FigureSide(
            NAME, 1, round, r, 0, r, 0, 180, 180, formed.has(NAME), turnedDown.has(NAME), false);
    return new RoundFigure(r, List.of(side));
  }

  @Override
  public double areaM2() {
    return Math.PI * radiusM * radiusM;
  }

  @Override
  public double perimeterM() {
    return 2 * Math.PI * radiusM;
  }

  @Override
  public double movedInAreaM2(double distanceM, SideChoice which) {
    double r = which.test(sides.get(0)) ? Math.max(0, radiusM - distanceM) : radiusM;
    return Math.PI * r * r;
  }

  @Override
  public double movedOutAreaM2(double distanceM, SideChoice which) {
    return movedInAreaM2(-distanceM, which);
  }

  /** {@inheritDoc} The first and the last line touch the circle and cut nothing. */
  @Override
  public List<Chord> lines(boolean along, double spacingM, double insetM) {
    double r = radiusM - insetM;
    if (!Length.ofMetres(r).isPositive()) {
      return List.of();
    }
    return SpacedLines.between(radiusM - r, radiusM + r, spacingM).stream()
        .map(offset -> chord(r, offset))
        .filter(chord -> Length.ofMetres(chord.lengthM()).isPositive())
        .toList();
  }

  private Chord chord(double r, double offsetM) {
    double away = offsetM - radiusM;
    double half = Math.sqrt(Math.max(0, r * r - away * away));
    return new Chord(radiusM - half, radiusM + half, offsetM);
  }

  @Override
  public double extentXM() {
    return 2 * radiusM;
  }

  @Override
  public double extentYM() {
    return 2 * radiusM;
  }
}
