package org.pourbook.ticket;

import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalDouble;

/** A load of concrete as its ticket tells it: a row of Concrete loads. */
public record ConcreteLoad(
    String job,
    String supplier,
    String ticket,
    double volume,
    String unit,
    Optional<LocalTime> batched,
    Optional<LocalTime> discharged,
    Optional<Integer> minutes,
    OptionalDouble waterAddedL) {}
