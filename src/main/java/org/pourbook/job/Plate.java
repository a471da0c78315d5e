package org.pourbook.job;

import java.util.Optional;
import java.util.OptionalDouble;
import org.pourbook.measure.BoltSize;
import org.pourbook.measure.Length;
import org.pourbook.problem.Place;

/**
 * A wall plate: one straight wall, {@code count} times.
 *
 * @param spacing as written; empty means the code maximum less the Bolt tolerance (BOLT-2)
 * @param pieceLength longest plate piece
 * @param width of the plate, when written
 * @param directionDegrees from the X axis, when written
 */
public record Plate(
    String code,
    Optional<String> section,
    Length length,
    int count,
    BoltSize bolt,
    Optional<Length> spacing,
    Length thickness,
    Length projection,
    Length pieceLength,
    Optional<Length> width,
    Optional<Position> start,
    OptionalDouble directionDegrees,
    Place place) {}
