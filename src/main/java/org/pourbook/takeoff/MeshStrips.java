package org.pourbook.takeoff;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.pourbook.job.Section;
import org.pourbook.job.Shape;
import org.pourbook.measure.Length;
import org.pourbook.outline.Figure.Chord;
import org.pourbook.outline.Figures;
import org.pourbook.takeoff.rule.BarMats;
import org.pourbook.takeoff.rule.MeshSheets;

/** The strips in which mesh is laid over a section (MESH-1). */
final class MeshStrips {

  /** Across how finely an outline is looked at for the length of a strip. */
  private static final double LOOK_M = 0.1;

  private MeshStrips() {}

  /**
   * Returns the lengths of the strips, each as long as what lies under it; openings are covered.
   */
  static List<Length> of(Section section, boolean along, Length width, Length lap) {
    Length edge = MeshSheets.edge();
    if (section.shape() instanceof Shape.Rectangle rectangle) {
      Length run = BarMats.between(along ? rectangle.length() : rectangle.width(), edge);
      Length across = BarMats.between(along ? rectangle.width() : rectangle.length(), edge);
      if (!run.isPositive() || !across.isPositive()) {
        return List.of();
      }
      int strips = MeshSheets.over(across, width, lap);
      return Collections.nCopies(strips, run);
    }
    return overOutline(Figures.of(section).lines(along, LOOK_M, edge.metres()), width, lap);
  }

  private static List<Length> overOutline(List<Chord> chords, Length width, Length lap) {
    double low = chords.stream().mapToDouble(Chord::offsetM).min().orElse(0);
    double high = chords.stream().mapToDouble(Chord::offsetM).max().orElse(0);
    Length across = Length.ofMetres(high - low);
    if (!across.isPositive()) {
      return List.of();
    }
    int strips = MeshSheets.over(across, width, lap);
    List<Length> lengths = new ArrayList<>();
    for (int i = 0; i < strips; i++) {
      double start = low + i * (width.metres() - lap.metres());
      lengths.add(under(chords, start, start + width.metres()));
    }
    return lengths.stream().filter(Length::isPositive).toList();
  }

  private static Length under(List<Chord> chords, double startM, double endM) {
    List<Chord> covered =
        chords.stream().filter(c -> c.offsetM() >= startM && c.offsetM() <= endM).toList();
    double from = covered.stream().mapToDouble(Chord::fromM).min().orElse(0);
    double to = covered.stream().mapToDouble(Chord::toM).max().orElse(0);
    return new Length(Math.round((to - from) * 1e6) * 1000);
  }
}
