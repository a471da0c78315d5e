package org.pourbook.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pourbook.buy.Earlier;
import org.pourbook.buy.InHand;
import org.pourbook.buy.JobTotals;
import org.pourbook.buy.StillOffered;
import org.pourbook.buy.Supplement;
import org.pourbook.buy.SupplementBuyer;
import org.pourbook.cut.CutPlanner;
import org.pourbook.desk.Revised.JobRevision;
import org.pourbook.job.Change;
import org.pourbook.job.ChangeState;
import org.pourbook.job.Job;
import org.pourbook.measure.Money;
import org.pourbook.problem.Problem;
import org.pourbook.takeoff.BoltPiece;
import org.pourbook.takeoff.OnOffer;
import org.pourbook.takeoff.TakeOff;
import org.pourbook.takeoff.TakeOffs;
import org.pourbook.ticket.Ordered;

/** The builder's desk again, when jobs have changed after they were ordered. */
public final class Revise {

  private final EarlierOrder earlier;
  private final Batch now;
  private final Set<String> left;

  private Revise(EarlierOrder earlier, Batch now, Set<String> unsound) {
    this.earlier = earlier;
    this.now = now;
    this.left = new HashSet<>(earlier.unreadable());
    this.left.addAll(unsound);
  }

  /**
   * Returns what must be ordered besides an earlier order, and what can be sent back.
   *
   * @param now the jobs as they are now, with the prices that hold now
   * @param unsound jobs of the input that could not be used: they are left as they were ordered
   * @param found every difference between the two inputs
   * @param problems of reading both
   */
  public static Revised revise(
      EarlierOrder earlier,
      Batch now,
      Set<String> unsound,
      List<FoundChange> found,
      List<Problem> problems,
      CutPlanner planner,
      String version) {
    return new Revise(earlier, now, unsound).revise(found, problems, planner, version);
  }

  private Revised revise(
      List<FoundChange> found, List<Problem> problems, CutPlanner planner, String version) {
    Batch before = earlier.book().batch();
    StillOffered offered = new StillOffered(before.prices(), now.prices());
    List<TakeOff> listed = takeOffs(before.jobs(), before.prices());
    PegsAsOrdered pegs = PegsAsOrdered.of(listed, earlier.book().ordered());
    List<TakeOff> were = pegs.in(listed, before.prices());
    List<TakeOff> are = pegs.in(takeOffs(now.jobs(), offered), offered);
    List<InHand> rows = earlier.book().ordered().stream().flatMap(Revise::rows).toList();
    Earlier order =
        new Earlier(
            were,
            before.prices(),
            rows.stream().filter(row -> !left.contains(row.job())).toList(),
            rows.stream().filter(row -> left.contains(row.job())).toList(),
            earlier.lastOrder());
    Supplement supplement = SupplementBuyer.buy(order, are, now.prices(), planner);
    List<Problem> all = new ArrayList<>(problems);
    all.addAll(supplement.besides().problems());
    all.addAll(
        MovedJobs.of(
            revised(before.jobs()).toList(), revised(now.jobs()).toList(), order.inHand()));
    all.addAll(RenamedJobs.of(before.jobs(), now.jobs()));
    all.sort(Comparator.comparing(Problem::place));
    return new Revised(
        found.stream().map(this::asked).toList(),
        new Estimate(read(), are, supplement.besides(), all, version),
        supplement,
        totals(supplement),
        newBolts(were, are));
  }

  /** Returns the input with the earlier order among its files. */
  private Batch read() {
    Set<Batch.InputFile> files = new LinkedHashSet<>(earlier.book().batch().files());
    files.addAll(now.files());
    return new Batch(now.jobs(), now.prices(), now.given(), List.copyOf(files));
  }

  private List<TakeOff> takeOffs(List<Job> jobs, OnOffer onOffer) {
    return revised(jobs).map(job -> TakeOffs.of(job, onOffer)).toList();
  }

  private Stream<Job> revised(List<Job> jobs) {
    return jobs.stream().filter(job -> !left.contains(job.code()));
  }

  private static Stream<InHand> rows(Ordered ordered) {
    return ordered.items().stream()
        .map(
            item ->
                new InHand(
                    ordered.job(),
                    ordered.key(),
                    ordered.unit(),
                    item.supplier(),
                    item.item(),
                    item.orderUnit(),
                    item.packHolds(),
                    item.packs(),
                    item.unitPrice(),
                    item.amount()));
  }

  /** Finds the owner's changes that a difference answers: of its section, else of its job. */
  private FoundChange asked(FoundChange found) {
    return found.askedBy(
        now.jobs().stream()
            .filter(job -> job.code().equals(found.job()))
            .flatMap(job -> job.changes().stream())
            .filter(change -> change.state() != ChangeState.DECLINED)
            .filter(change -> touches(change, found))
            .map(change -> change.code() + ": " + change.what() + " (" + state(change) + ")")
            .collect(Collectors.joining("; ")));
  }

  private static boolean touches(Change change, FoundChange found) {
    return change.section().isEmpty() || change.section().get().equals(found.section());
  }

  private static String state(Change change) {
    return change.state().label();
  }

  private List<JobRevision> totals(Supplement supplement) {
    Map<String, JobTotals> besides =
        supplement.besides().totals().stream()
            .collect(Collectors.toMap(JobTotals::job, Function.identity()));
    Map<String, Job> jobs = new LinkedHashMap<>();
    now.jobs().forEach(job -> jobs.put(job.code(), job));
    earlier.book().batch().jobs().forEach(job -> jobs.putIfAbsent(job.code(), job));
    Set<String> current =
        now.jobs().stream().map(Job::code).collect(Collectors.toUnmodifiableSet());
    Set<String> codes = new LinkedHashSet<>(jobs.keySet());
    codes.addAll(new TreeSet<>(earlier.totals().keySet()));
    Money none = Money.ZERO;
    return codes.stream()
        .map(
            code -> {
              Optional<JobTotals> more = Optional.ofNullable(besides.get(code));
              Optional<Job> job = Optional.ofNullable(jobs.get(code));
              return new JobRevision(
                  code,
                  job.map(Job::description).orElse(""),
                  earlier.totals().getOrDefault(code, none),
                  more.map(t -> t.materials().plus(t.services())).orElse(none),
                  more.map(JobTotals::deliveryAndFees).orElse(none),
                  more.map(JobTotals::tax).orElse(none),
                  supplement.credit(code),
                  supplement.creditTax().getOrDefault(code, none),
                  more.map(JobTotals::unpriced).orElse(0),
                  job.filter(known -> current.contains(code)).map(Revise::open).orElse(0));
            })
        .toList();
  }

  private static int open(Job job) {
    return job.openChanges().size();
  }

  /** Returns the jobs with the bolts of plates that were not so before. */
  private static List<TakeOff> newBolts(List<TakeOff> were, List<TakeOff> are) {
    Map<String, List<BoltPiece>> known = new HashMap<>();
    were.forEach(job -> known.put(job.job().code(), job.boltPieces()));
    return are.stream()
        .map(
            takeOff -> {
              List<BoltPiece> before = known.getOrDefault(takeOff.job().code(), List.of());
              return takeOff.withBolts(
                  takeOff.boltPieces().stream().filter(bolt -> !before.contains(bolt)).toList());
            })
        .toList();
  }
}
