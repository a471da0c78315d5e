package org.pourbook.buy;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;

/**
 * A truckload of concrete.
 *
 * @param load number within the pour and mix, from 1; of what is ordered besides, on from the
 *     earlier order's
 * @param arrives time of day; the date too where the pour is dated
 * @param covers what it fills, in words
 */
public record Load(
    String job,
    int pour,
    String mix,
    int load,
    double volumeM3,
    LocalTime arrives,
    Optional<LocalDateTime> arrivesOn,
    String covers,
    String note) {}
