package org.pourbook.desk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.pourbook.takeoff.CutPegs;
import org.pourbook.takeoff.MaterialKey;
import org.pourbook.takeoff.OnOffer;
import org.pourbook.takeoff.PieceNeed;
import org.pourbook.takeoff.Quantity;
import org.pourbook.takeoff.TakeOff;
import org.pourbook.ticket.Ordered;

/**
 * How many stakes and braces an earlier order had cut from its boards instead of bought: what
 * take-off had listed less what Materials says. A revision has as many cut.
 */
record PegsAsOrdered(Map<Need, Integer> cut) {

  /** Pegs of a job, by their material as it is compared. */
  record Need(String job, MaterialKey material) {}

  /** Returns what was cut, of take-offs that list all pegs as bought. */
  static PegsAsOrdered of(List<TakeOff> listed, List<Ordered> ordered) {
    Map<Need, Double> nets = new HashMap<>();
    Set<String> known = new LinkedHashSet<>();
    for (Ordered one : ordered) {
      nets.merge(new Need(one.job(), one.key().normal()), one.estimated(), Double::sum);
      known.add(one.job());
    }
    Map<Need, Integer> cut = new HashMap<>();
    for (TakeOff takeOff : listed) {
      String job = takeOff.job().code();
      for (PieceNeed peg : takeOff.pegs()) {
        Need need = new Need(job, peg.material().normal());
        if (known.contains(job) && !cut.containsKey(need)) {
          double less = net(takeOff, need.material()) - nets.getOrDefault(need, 0.0);
          cut.put(need, (int) Math.max(0, Math.round(less)));
        }
      }
    }
    return new PegsAsOrdered(cut);
  }

  private static double net(TakeOff takeOff, MaterialKey material) {
    return takeOff.quantities().stream()
        .filter(
            quantity ->
                quantity.material().map(MaterialKey::normal).filter(material::equals).isPresent())
        .mapToDouble(Quantity::amount)
        .sum();
  }

  /**
   * Returns take-offs in which as many pegs are cut, or all that there are where these are fewer.
   */
  List<TakeOff> in(List<TakeOff> listed, OnOffer onOffer) {
    return listed.stream().map(takeOff -> in(takeOff, onOffer)).toList();
  }

  private TakeOff in(TakeOff takeOff, OnOffer onOffer) {
    Optional<MaterialKey> board = CutPegs.board(takeOff.job().units(), onOffer);
    Set<MaterialKey> materials = new LinkedHashSet<>();
    takeOff.pegs().forEach(peg -> materials.add(peg.material().normal()));
    List<PieceNeed> some = new ArrayList<>();
    for (MaterialKey material : materials) {
      List<PieceNeed> pegs =
          takeOff.pegs().stream().filter(peg -> peg.material().normal().equals(material)).toList();
      int count = cut.getOrDefault(new Need(takeOff.job().code(), material), 0);
      some.addAll(CutPegs.shortest(pegs, count));
    }
    return board.map(size -> CutPegs.of(takeOff, size, some)).orElse(takeOff);
  }
}
