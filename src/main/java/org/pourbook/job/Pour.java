package org.pourbook.job;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.measure.Length;

/**
 * One pour of a job with its defaults filled in.
 *
 * @param number from 1
 * @param crew people placing (default 5, the crew the placing rates are given for)
 */
public record Pour(
    int number,
    Optional<LocalDate> date,
    LocalTime start,
    String mix,
    Placing placing,
    int crew,
    String slump,
    OptionalDouble airPercent,
    Optional<Length> hoseLength,
    Weather weather) {}
