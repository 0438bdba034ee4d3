package org.cupwright.app.office.weeks;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.app.answers.WeekCell;
import org.cupwright.app.answers.WeekCell.Sign;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;

/** What is out of the usual with a hole, in words instead of signs. */
record SignText(Texts texts) {
    List<String> all(WeekCell cell, StoredHole hole) {
        return cell.signs().stream().map(sign -> says(sign, hole)).toList();
    }

    String says(Sign sign, StoredHole hole) {
        String key = "weeks.means." + EnumNames.lowerCamel(sign);
        return switch (sign) {
            case SET_ASIDE -> texts.say(key, rules(hole));
            case ASKED -> texts.say(key, hole.askedBy().orElseThrow());
            case STAYS -> texts.say(key, texts.weekday(hole.since().orElseThrow()));
            case CARE, FIXED -> texts.say(key);
        };
    }

    private String rules(StoredHole hole) {
        return hole.position().judgement().setAside().stream()
                .map(rule -> texts.say("rule." + rule.id()))
                .collect(Collectors.joining(", "));
    }

    /** What the signs mean, for the line under the table. */
    String legend() {
        return Stream.of(Sign.values())
                .map(sign -> texts.say("weeks.sign." + EnumNames.lowerCamel(sign)) + " "
                        + texts.say("weeks.legend." + EnumNames.lowerCamel(sign)))
                .collect(Collectors.joining(" · "));
    }
}
