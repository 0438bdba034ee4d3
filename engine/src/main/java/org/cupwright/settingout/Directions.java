package org.cupwright.settingout;

import java.util.Optional;
import org.cupwright.course.MapPoint;

/**
 * What the changer needs to find a position.
 *
 * @param at the position
 * @param place words and paces; empty where the hole has no line of play
 * @param fromMark paces from the nearest mark; empty where the hole has none
 * @param leeway how far off is still good; empty where that was not judged
 */
public record Directions(
        MapPoint at, Optional<PacedPlace> place, Optional<FromMark> fromMark, Optional<Leeway> leeway) {}
