package org.cupwright.app.sheets;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.cupwright.app.maps.GreenDrawing;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;

/**
 * One hole as it stands on paper.
 *
 * @param hole its name
 * @param par its par, when known
 * @param place where the hole is or is to be; empty without a line of play
 * @param fallback where it is in words of the map, for greens without a line of play
 * @param goodWithinMetres how far off is still good
 * @param verdict what the rules say
 * @param checked whether the slope was checked at all
 * @param setAside rules set aside today
 * @param yesterday where yesterday's hole is, to be filled with the plug
 * @param drawing the green with what lies on it
 */
public record SheetHole(
        String hole,
        OptionalInt par,
        Optional<PlaceOnGreen> place,
        String fallback,
        double goodWithinMetres,
        Verdict verdict,
        boolean checked,
        Set<RuleId> setAside,
        Optional<PlaceOnGreen> yesterday,
        GreenDrawing drawing) {}
