package org.cupwright.app.sheets;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.Third;
import org.cupwright.policy.EnumNames;
import org.cupwright.policy.Policy;
import org.cupwright.policy.Setting;
import org.cupwright.settingout.PacedPlace;

/**
 * Which flag stands where, by the course's settings; a letter goes with every colour, for those who cannot tell colours
 * apart.
 */
public record Flags(Texts texts, Policy policy) {
    public String letter(Third third) {
        return texts.say("sheet.flagLetter." + EnumNames.lowerCamel(third));
    }

    /** The colour's name; empty where the course shows positions by something else. */
    String colour(Third third) {
        Setting<String> flag = switch (third) {
            case FRONT -> PaperPolicy.FLAG_FRONT;
            case MIDDLE -> PaperPolicy.FLAG_MIDDLE;
            case BACK -> PaperPolicy.FLAG_BACK;
        };
        return new CourseText(texts, policy).of(flag);
    }

    public String named(Third third) {
        return (letter(third) + " " + colour(third)).strip();
    }

    /**
     * How many of which flag a round takes, {@code 6 × F red}; holes without a line of play are counted apart, and
     * where a hole stays its flag does.
     */
    public List<String> load(DaySheet day) {
        List<String> load = new ArrayList<>();
        List<SheetHole> changed =
                day.holes().stream().filter(hole -> !hole.stays()).toList();
        if (changed.isEmpty()) {
            return List.of(texts.say("sheet.card.flagsStay"));
        }
        List<Third> told = changed.stream()
                .flatMap(hole -> hole.paced().map(PacedPlace::third).stream())
                .toList();
        for (Third third : Third.values()) {
            load.add(texts.say("sheet.card.flags", Collections.frequency(told, third), named(third)));
        }
        long cut = changed.stream().filter(hole -> hole.cut().isPresent()).count();
        if (told.size() < cut) {
            load.add(texts.say("sheet.card.flagsOpen", cut - told.size()));
        }
        return load;
    }
}
