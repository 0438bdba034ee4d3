package org.cupwright.turf.state;

import java.time.LocalDate;
import org.cupwright.course.MapPoint;

/** The hole as it is now: where, and the day on which it was cut. */
public record CupInGround(MapPoint at, LocalDate cutOn) {}
