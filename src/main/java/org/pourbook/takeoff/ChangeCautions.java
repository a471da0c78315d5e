package org.pourbook.takeoff;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.pourbook.job.Change;
import org.pourbook.job.Job;

/** A change that the owner asked for and no section has taken up must not be lost. */
final class ChangeCautions {

  private ChangeCautions() {}

  /** Returns a caution for each open change of a job. */
  static Part of(Job job) {
    Part part = new Part();
    for (Change change : job.openChanges()) {
      part.add(new Caution(change.section().orElse(""), says(change), "READY-1"));
    }
    return part;
  }

  private static String says(Change change) {
    String asked =
        Stream.of(change.askedBy(), change.date().map(Object::toString).orElse(""))
            .filter(words -> !words.isEmpty())
            .collect(Collectors.joining(", "));
    return "Open change "
        + change.code()
        + ": "
        + change.what()
        + (asked.isEmpty() ? "" : " (" + asked + ")")
        + ". It is in no quantity and in no order until a section takes it up.";
  }
}
