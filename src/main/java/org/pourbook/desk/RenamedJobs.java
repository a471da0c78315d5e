package org.pourbook.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.pourbook.job.Job;
import org.pourbook.problem.Problem;

/** Jobs that may be known under another code now. */
final class RenamedJobs {

  private RenamedJobs() {}

  /**
   * Returns a note for each new job that has the sections of one that is gone: what was ordered for
   * that one is sent back, and ordered again for this one.
   */
  static List<Problem> of(List<Job> before, List<Job> now) {
    Set<String> were = codes(before);
    Set<String> are = codes(now);
    List<Problem> notes = new ArrayList<>();
    for (Job job : now) {
      if (!were.contains(job.code())) {
        before.stream()
            .filter(old -> !are.contains(old.code()) && sections(old).equals(sections(job)))
            .findFirst()
            .ifPresent(old -> notes.add(note(old, job)));
      }
    }
    return notes;
  }

  private static Set<String> codes(List<Job> jobs) {
    return jobs.stream().map(Job::code).collect(Collectors.toSet());
  }

  /** Returns the sections as they are built, without where they were written. */
  private static Set<String> sections(Job job) {
    return job.sections().stream()
        .map(
            section ->
                section.code()
                    + " "
                    + section.kind().label()
                    + " "
                    + section.count()
                    + " "
                    + section.thickness())
        .collect(Collectors.toSet());
  }

  private static Problem note(Job old, Job job) {
    return new Problem(
        job.place(),
        job.code(),
        "job " + old.code() + " is gone, and new job " + job.code() + " has the same sections",
        "the code it was ordered under, where it is the same job; else all is ordered anew",
        Problem.Effect.NOTE);
  }
}
