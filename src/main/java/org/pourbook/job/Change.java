package org.pourbook.job;

import java.time.LocalDate;
import java.util.Optional;
import org.pourbook.problem.Place;

/** A change the owner asked for. */
public record Change(
    String code,
    Optional<LocalDate> date,
    String askedBy,
    String what,
    Optional<String> section,
    ChangeState state,
    Place place) {}
