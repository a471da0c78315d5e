package org.pourbook.book.out;

import java.util.List;
import org.pourbook.takeoff.rule.BarBends;
import org.pourbook.takeoff.rule.BarCaps;
import org.pourbook.takeoff.rule.BarLaps;
import org.pourbook.takeoff.rule.BarMats;
import org.pourbook.takeoff.rule.BarSupports;
import org.pourbook.takeoff.rule.BarWeights;
import org.pourbook.takeoff.rule.CompactedBase;
import org.pourbook.takeoff.rule.ConcreteOrder;
import org.pourbook.takeoff.rule.DevelopmentLengths;
import org.pourbook.takeoff.rule.Dowels;
import org.pourbook.takeoff.rule.EdgeBars;
import org.pourbook.takeoff.rule.Finishing;
import org.pourbook.takeoff.rule.MeshSheets;
import org.pourbook.takeoff.rule.Prismatoid;
import org.pourbook.takeoff.rule.RetarderStrips;
import org.pourbook.takeoff.rule.SlabVolume;
import org.pourbook.takeoff.rule.StepTieBars;
import org.pourbook.takeoff.rule.TieWire;
import org.pourbook.takeoff.rule.TurnedDownEdge;

/** The classes whose methods are rules; a test holds the list complete. */
final class RuleClasses {

  static final List<Class<?>> ALL =
      List.of(
          BarBends.class,
          BarCaps.class,
          BarLaps.class,
          BarMats.class,
          BarSupports.class,
          BarWeights.class,
          CompactedBase.class,
          ConcreteOrder.class,
          DevelopmentLengths.class,
          Dowels.class,
          EdgeBars.class,
          Finishing.class,
          MeshSheets.class,
          Prismatoid.class,
          RetarderStrips.class,
          SlabVolume.class,
          StepTieBars.class,
          TieWire.class,
          TurnedDownEdge.class);

  private RuleClasses() {}
}
