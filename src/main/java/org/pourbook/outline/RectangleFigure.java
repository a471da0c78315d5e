package org.pourbook.outline;

import java.util.List;
import org.pourbook.job.Shape;
import org.pourbook.job.Sides;
import org.pourbook.measure.Length;

/** A rectangle from 0, 0 in closed form; its sides are L1, W2, L2, W1. */
record RectangleFigure(double lengthM, double widthM, List<FigureSide> sides) implements Figure {

  static RectangleFigure of(Shape.Rectangle shape, Sides formed, Sides turnedDown) {
    double l = shape.length().metres();
    double w = shape.width().metres();
    return new RectangleFigure(
        l,
        w,
        List.of(
            side("L1", shape.length(), 0, 0, l, 0, formed, turnedDown),
            side("W2", shape.width(), l, 0, l, w, formed, turnedDown),
            side("L2", shape.length(), l, w, 0, w, formed, turnedDown),
            side("W1", shape.width(), 0, w, 0, 0, formed, turnedDown)));
  }

  private static FigureSide side(
      String name,
      Length length,
      double x1,
      double y1,
      double x2,
      double y2,
      Sides formed,
      Sides turnedDown) {
    return new FigureSide(
        name, 1, length, x1, y1, x2, y2, 90, 90, formed.has(name), turnedDown.has(name), false);
  }

  @Override
  public double areaM2() {
    return lengthM * widthM;
  }

  @Override
  public double perimeterM() {
    return 2 * (lengthM + widthM);
  }

  @Override
  public double movedInAreaM2(double distanceM, SideChoice which) {
    return Math.max(0, lengthM - distanceM * moved("W", which))
        * Math.max(0, widthM - distanceM * moved("L", which));
  }

  @Override
  public double movedOutAreaM2(double distanceM, SideChoice which) {
    return movedInAreaM2(-distanceM, which);
  }

  private long moved(String letter, SideChoice which) {
    return sides.stream().filter(s -> s.name().startsWith(letter) && which.test(s)).count();
  }

  @Override
  public List<Chord> lines(boolean along, double spacingM, double insetM) {
    double runM = along ? lengthM : widthM;
    double acrossM = along ? widthM : lengthM;
    if (!Length.ofMetres(runM - 2 * insetM).isPositive()) {
      return List.of();
    }
    return SpacedLines.between(insetM, acrossM - insetM, spacingM).stream()
        .map(offset -> new Chord(insetM, runM - insetM, offset))
        .toList();
  }

  @Override
  public double extentXM() {
    return lengthM;
  }

  @Override
  public double extentYM() {
    return widthM;
  }
}
