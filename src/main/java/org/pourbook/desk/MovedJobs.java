package org.pourbook.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.pourbook.buy.InHand;
import org.pourbook.job.Job;
import org.pourbook.job.Pour;
import org.pourbook.problem.Problem;

/** Jobs whose orders stand, but for another day or place: no need of theirs need have changed. */
final class MovedJobs {

  private MovedJobs() {}

  /**
   * Returns a note for each job that is poured on other days, or has its goods brought elsewhere,
   * than when it was ordered.
   *
   * @param ordered what was ordered, to name who must be asked
   */
  static List<Problem> of(List<Job> before, List<Job> now, List<InHand> ordered) {
    Map<String, Job> were = before.stream().collect(Collectors.toMap(Job::code, job -> job));
    List<Problem> notes = new ArrayList<>();
    for (Job job : now) {
      Job was = were.get(job.code());
      TreeSet<String> suppliers = suppliers(job.code(), ordered);
      if (was != null && !suppliers.isEmpty()) {
        told(was, job, "poured", MovedJobs::days, "moved to the new day", suppliers)
            .ifPresent(notes::add);
        told(was, job, "delivered to", MovedJobs::place, "sent to the new place", suppliers)
            .ifPresent(notes::add);
      }
    }
    return notes;
  }

  private static TreeSet<String> suppliers(String job, List<InHand> ordered) {
    return ordered.stream()
        .filter(row -> row.job().equals(job) && row.packs().signum() > 0)
        .map(InHand::supplier)
        .filter(name -> !name.isEmpty())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Optional<Problem> told(
      Job was,
      Job job,
      String what,
      Function<Job, String> told,
      String wanted,
      TreeSet<String> suppliers) {
    String before = told.apply(was);
    String now = told.apply(job);
    return before.equals(now)
        ? Optional.empty()
        : Optional.of(
            new Problem(
                job.place(),
                job.code(),
                what + " " + before + " when it was ordered, " + now + " now",
                "its orders " + wanted + ": ask " + String.join(", ", suppliers),
                Problem.Effect.NOTE));
  }

  private static String days(Job job) {
    String days =
        job.pours().stream()
            .map(Pour::date)
            .flatMap(Optional::stream)
            .map(LocalDate::toString)
            .collect(Collectors.joining(", "));
    return days.isEmpty() ? "on no date" : days;
  }

  private static String place(Job job) {
    return job.deliverTo().orElse("the site");
  }
}
