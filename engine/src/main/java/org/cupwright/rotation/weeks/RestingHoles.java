package org.cupwright.rotation.weeks;

import java.util.List;

/** Which holes of a plan are against a rule: on ground that rests about an older one, or on eased ground. */
final class RestingHoles {
    private final WeeksModel model;

    RestingHoles(WeeksModel model) {
        this.model = model;
    }

    /** How many of some greens that are one do. */
    int count(Choices choices, List<Integer> greens) {
        int count = 0;
        for (int green : greens) {
            for (int day = 0; day < model.dayCount(); day++) {
                count += rests(choices, green, day) ? 1 : 0;
            }
        }
        return count;
    }

    boolean rests(Choices choices, int green, int day) {
        int spot = choices.chosen(green, day);
        if (spot == GreenTable.NONE || !model.table(green).cut(day)) {
            return false;
        }
        boolean rests = model.table(green).eased(spot) || model.green(green).onRestingPast(day, spot);
        for (int source : model.sharing(green)) {
            Stays stays = model.table(source).stays();
            for (int before = 0; before < day; before++) {
                if (!stays.begins(before) || stays.end(before) > day) {
                    continue;
                }
                int old = choices.chosen(source, before);
                rests |= old != GreenTable.NONE
                        && model.green(source).restsUntil(before) >= day
                        && model.table(green)
                                        .at(spot)
                                        .distanceMetres(model.table(source).at(old))
                                < model.restMetres();
            }
        }
        return rests;
    }
}
