package org.cupwright.app.office.begin;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;

/** The steps of the evening, in their order. */
enum Step {
    PLACE("/begin/place"),
    GREENS("/begin/greens"),
    NUMBERS("/begin/numbers"),
    SETTINGS("/begin/settings"),
    LOOK("/begin/look"),
    PRINT("/begin/print");

    private final String address;

    Step(String address) {
        this.address = address;
    }

    String address() {
        return address;
    }

    /**
     * A step in the row of steps.
     *
     * @param key of its word
     * @param address where it is; empty as long as one cannot go there
     * @param here whether one is there
     * @param done whether all of it is done
     */
    record Shown(String key, String address, boolean here, boolean done) {}

    static List<Shown> shown(Step here, Optional<SettingUp> stands) {
        boolean course = stands.filter(SettingUp::done).isPresent();
        return Stream.of(values())
                .map(step -> new Shown(
                        "begin.step." + step.name().toLowerCase(Locale.ROOT),
                        step.isOpen(stands, course) ? step.address : "",
                        step == here,
                        stands.filter(step::isDone).isPresent()))
                .toList();
    }

    private boolean isOpen(Optional<SettingUp> stands, boolean course) {
        return course ? this == PRINT : this == PLACE || stands.isPresent() && this != PRINT;
    }

    private boolean isDone(SettingUp stands) {
        List<BegunGreen> greens = stands.ofHoles();
        return stands.done()
                || switch (this) {
                    case PLACE -> true;
                    case GREENS -> !greens.isEmpty();
                    case NUMBERS ->
                        !greens.isEmpty()
                                && greens.stream()
                                        .allMatch(green -> green.named()
                                                && green.hole().lineOfPlay().isPresent());
                    case SETTINGS -> stands.decided();
                    case LOOK, PRINT -> false;
                };
    }

    /** Where somebody goes on who comes back. */
    static Step next(Optional<SettingUp> stands) {
        if (stands.filter(SettingUp::done).isPresent()) {
            return PRINT;
        }
        return Stream.of(values())
                .filter(step -> step == LOOK || stands.filter(step::isDone).isEmpty())
                .findFirst()
                .orElseThrow();
    }
}
