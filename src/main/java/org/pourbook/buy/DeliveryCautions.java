package org.pourbook.buy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.pourbook.job.Job;
import org.pourbook.job.Setting;
import org.pourbook.measure.Money;

/**
 * Tells where one supplier comes again and again to one place and is paid for each time (BUY-7):
 * goods are wanted when they are needed (BUY-5), which on a small job is a delivery for every few
 * boxes.
 */
final class DeliveryCautions {

  /** Forms first and steel after them is usual; more often is worth a word. */
  private static final int FEW = 2;

  private record Stop(Supplier supplier, String deliverTo) {}

  private DeliveryCautions() {}

  /** Returns them for every job of the deliveries that might come together. */
  static List<Bought.BuyCaution> of(List<OrderDraft> drafts) {
    Map<Stop, List<OrderDraft>> paid = new LinkedHashMap<>();
    for (OrderDraft draft : drafts) {
      if (draft.supplier().isPresent()
          && draft.delivery().day().isPresent()
          && draft.isOfGoods()
          && !draft.deliveryFee().isZero()) {
        Stop stop = new Stop(draft.supplier().get(), draft.delivery().deliverTo());
        paid.computeIfAbsent(stop, k -> new ArrayList<>()).add(draft);
      }
    }
    List<Bought.BuyCaution> cautions = new ArrayList<>();
    paid.forEach(
        (stop, all) -> {
          for (List<OrderDraft> near : near(all)) {
            if (near.size() > FEW) {
              cautions.addAll(cautions(stop, near));
            }
          }
        });
    return cautions;
  }

  /**
   * Returns deliveries in the order of their days, parted where they are too far from the first.
   */
  private static List<List<OrderDraft>> near(List<OrderDraft> all) {
    List<List<OrderDraft>> groups = new ArrayList<>();
    LocalDate until = LocalDate.MIN;
    for (OrderDraft draft : all) {
      LocalDate day = draft.delivery().day().orElseThrow();
      if (day.isAfter(until)) {
        groups.add(new ArrayList<>());
        until = day.plusDays(together(draft));
      }
      groups.get(groups.size() - 1).add(draft);
    }
    return groups;
  }

  private static long together(OrderDraft draft) {
    return draft.jobs().stream()
        .mapToLong(job -> (long) job.practice().number(Setting.DELIVER_TOGETHER))
        .min()
        .orElse(0);
  }

  private static List<Bought.BuyCaution> cautions(Stop stop, List<OrderDraft> near) {
    Set<LocalDate> days =
        near.stream()
            .map(draft -> draft.delivery().day().orElseThrow())
            .collect(Collectors.toCollection(TreeSet::new));
    String says =
        stop.supplier().name()
            + " is paid for "
            + near.size()
            + " deliveries to "
            + stop.deliverTo()
            + " from "
            + days.iterator().next()
            + " to "
            + near.get(near.size() - 1).delivery().day().orElseThrow()
            + ", "
            + Money.sum(near.stream().map(OrderDraft::deliveryFee).toList())
            + " in all. What may lie on site can come at once: \"Ahead of pour, goods\" on"
            + " Practice, e.g. 5";
    return near.stream()
        .flatMap(draft -> draft.jobs().stream())
        .map(Job::code)
        .distinct()
        .map(job -> new Bought.BuyCaution(job, "", says, "BUY-7"))
        .toList();
  }
}
