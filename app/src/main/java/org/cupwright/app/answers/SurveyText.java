package org.cupwright.app.answers;

import java.nio.file.Path;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.desk.resurvey.ListSurveys;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;

/** The surveys of greens in words. */
public final class SurveyText {
    private SurveyText() {}

    /** The surveys green by green, the oldest first. */
    public static Lines list(Texts texts, ListSurveys.Answer answer) {
        Lines lines = new Lines(texts);
        List<String> without = new ArrayList<>();
        for (ListSurveys.OfGreen green : answer.greens()) {
            if (green.surveys().isEmpty()) {
                without.add(green.hole().id());
            } else {
                lines.say("survey.where.hole", green.hole().id());
            }
            ZoneId zone = answer.day().course().frame().zone();
            green.surveys().forEach(version -> lines.line("  " + row(texts, version, zone)));
        }
        return without.isEmpty()
                ? lines
                : lines.wrapped("", texts.say("survey.list.without", String.join(", ", without)));
    }

    private static String row(Texts texts, SurveyVersion version, ZoneId zone) {
        String moment = texts.moment(version.recordedAt(), zone);
        return version.kind()
                .map(kind -> texts.say("survey.kind." + EnumNames.lowerCamel(kind)))
                .map(kind -> texts.say(
                        "survey.list.rowOfKind", version.number(), moment, version.points(), kind, file(version)))
                .orElseGet(
                        () -> texts.say("survey.list.row", version.number(), moment, version.points(), file(version)));
    }

    /** The file it came from, by its name alone. */
    public static String file(SurveyVersion version) {
        return Path.of(version.origin().file()).getFileName().toString();
    }
}
