package org.cupwright.rotation.weeks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.green.GroundOnDay;

/**
 * What lies on the greens on the days of a plan, before each day's holes are cut, if all is done as planned: a hole
 * that stays is none of the old ones.
 */
final class PlannedGround {
    private final WeeksModel model;
    private final RestDays rests;
    private final Choices choices;

    PlannedGround(WeeksModel model, RestDays rests, Choices choices) {
        this.model = model;
        this.rests = rests;
        this.choices = choices;
    }

    GroundOnDay on(int green, int day) {
        GroundOnDay known = model.table(green).green().days().get(day).ground();
        List<GroundItem> items = new ArrayList<>();
        for (int source : model.sharing(green)) {
            items.addAll(holes(source, day));
        }
        items.addAll(known.items());
        return new GroundOnDay(known.day(), items);
    }

    private List<GroundItem> holes(int green, int day) {
        List<GroundItem> items = new ArrayList<>();
        PlanCalendar calendar = model.calendar();
        LocalDate today = calendar.date(day);
        GreenTable table = model.table(green);
        for (PastHole past : table.past()) {
            LocalDate left = past.leftOn().orElse(calendar.date(0));
            items.add(hole(past.at(), past.lastDay(calendar.date(0)), left, today));
            if (past.leftOn().isEmpty() && left.isBefore(today)) {
                items.add(plug(past.at(), left));
            }
        }
        Stays stays = table.stays();
        for (int earlier = 0; earlier < day; earlier++) {
            boolean left = stays.begins(earlier) && stays.end(earlier) <= day;
            if (left && choices.chosen(green, earlier) != GreenTable.NONE) {
                MapPoint at = table.at(choices.chosen(green, earlier));
                LocalDate leftOn = stays.leftOn(earlier);
                items.add(hole(at, calendar.date(stays.end(earlier) - 1), leftOn, today));
                if (leftOn.isBefore(today)) {
                    items.add(plug(at, leftOn));
                }
            }
        }
        return items;
    }

    /** The hole that is left this very day still is where it is, and nobody knows of an end to its rest. */
    private GroundItem hole(MapPoint at, LocalDate lastDay, LocalDate leftOn, LocalDate today) {
        Optional<LocalDate> until = leftOn.isBefore(today) ? Optional.of(rests.restsUntil(leftOn)) : Optional.empty();
        return new GroundItem(Kind.OLD_HOLE, at.toPoint(), Optional.of(lastDay), until);
    }

    private GroundItem plug(MapPoint at, LocalDate setOn) {
        return new GroundItem(Kind.PLUG, at.toPoint(), Optional.of(setOn), Optional.of(rests.plugShowsUntil(setOn)));
    }
}
