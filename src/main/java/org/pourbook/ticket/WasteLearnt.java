package org.pourbook.ticket;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.pourbook.takeoff.MaterialKey;

/** Actual waste by kind of pour (TICK-5). */
final class WasteLearnt {

  private WasteLearnt() {}

  private record Outcome(double netM3, double deliveredM3) {
    double wastePercent() {
      return 100 * (deliveredM3 / netM3 - 1);
    }
  }

  /**
   * Returns a row a kind. A job with one pour takes all its concrete tickets; of several, each
   * ticket goes to the pour of its date, and a pour no ticket fits is left out, and one of which
   * less came than its net, beyond Quantity difference: the rest is to come.
   */
  static List<Learned> of(
      List<PourPlanned> pours, List<Claim> concrete, Function<String, Terms> terms) {
    Map<String, List<Outcome>> byKind = new TreeMap<>();
    Map<String, List<Claim>> byJob =
        concrete.stream().collect(Collectors.groupingBy(row -> MaterialKey.normal(row.job())));
    Map<String, Long> poursOfJob =
        pours.stream().collect(Collectors.groupingBy(PourPlanned::job, Collectors.counting()));
    for (PourPlanned pour : pours) {
      boolean only = poursOfJob.getOrDefault(pour.job(), 0L) == 1;
      double m3 =
          byJob.getOrDefault(MaterialKey.normal(pour.job()), List.of()).stream()
              .filter(claim -> only || isOn(claim.ticket(), pour))
              .mapToDouble(Claim::concreteM3)
              .sum();
      double least = pour.netM3() * (1 - terms.apply(pour.job()).quantityPercent() / 100);
      if (m3 > 0 && pour.netM3() > 0 && m3 >= least) {
        byKind
            .computeIfAbsent(pour.kind(), kind -> new ArrayList<>())
            .add(new Outcome(pour.netM3(), m3));
      }
    }
    return byKind.entrySet().stream().map(e -> learned(e.getKey(), e.getValue())).toList();
  }

  private static boolean isOn(Ticket ticket, PourPlanned pour) {
    return ticket.date().map(date -> date.toString().equals(pour.date())).orElse(false);
  }

  private static Learned learned(String kind, List<Outcome> pours) {
    double net = pours.stream().mapToDouble(Outcome::netM3).sum();
    double delivered = pours.stream().mapToDouble(Outcome::deliveredM3).sum();
    double mean = pours.stream().mapToDouble(Outcome::wastePercent).sum() / pours.size();
    double squares =
        pours.stream()
            .mapToDouble(pour -> (pour.wastePercent() - mean) * (pour.wastePercent() - mean))
            .sum();
    double spread = pours.size() < 2 ? Double.NaN : StrictMath.sqrt(squares / (pours.size() - 1));
    return new Learned(
        kind, pours.size(), net, delivered, new Outcome(net, delivered).wastePercent(), spread);
  }
}
