package org.pourbook.buy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
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
            int enough = atOnce(near);
            if (near.size() > FEW && near.size() > enough) {
              cautions.addAll(cautions(stop, near, enough));
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

  /**
   * Returns how many of the deliveries remain if goods of each job come with its first ones: those
   * of materials that have days of their own in Practice are left there.
   */
  private static int atOnce(List<OrderDraft> near) {
    Set<LocalDate> days = new TreeSet<>();
    Set<String> begun = new HashSet<>();
    for (OrderDraft draft : near) {
      for (OrderDraft.Good good : draft.goods()) {
        String material = good.lot().key().material();
        for (Job job : jobs(good, draft)) {
          boolean stays = job.practice().aheadOfPourDays(material).isPresent();
          if (stays || begun.add(job.code())) {
            days.add(draft.delivery().day().orElseThrow());
          }
        }
      }
    }
    return days.size();
  }

  /** Returns for which jobs an item comes that day; a lot may come on several. */
  private static List<Job> jobs(OrderDraft.Good good, OrderDraft draft) {
    List<Job> jobs =
        good.lot().portions().stream()
            .filter(portion -> portion.delivery().equals(draft.delivery()))
            .map(Portion::job)
            .toList();
    return jobs.isEmpty() ? good.lot().jobs() : jobs;
  }

  private static List<Bought.BuyCaution> cautions(Stop stop, List<OrderDraft> near, int enough) {
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
            + " in all; "
            + enough
            + " would do. What may lie on site can come at once: \"Ahead of pour, goods\" on"
            + " Practice, e.g. 5";
    return near.stream()
        .flatMap(draft -> draft.jobs().stream())
        .map(Job::code)
        .distinct()
        .map(job -> new Bought.BuyCaution(job, "", says, "BUY-7"))
        .toList();
  }
}
