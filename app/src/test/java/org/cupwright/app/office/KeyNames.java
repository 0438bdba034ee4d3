package org.cupwright.app.office;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.cupwright.app.desk.begin.PictureStep;
import org.cupwright.app.desk.entry.typed.Draft;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.entry.typed.Part;
import org.cupwright.app.desk.policy.DeskPolicy;
import org.cupwright.app.desk.policy.Settings;
import org.cupwright.holelocation.RuleId;
import org.cupwright.message.Message;
import org.cupwright.policy.EnumNames;
import org.cupwright.policy.Setting;
import org.cupwright.units.LengthUnit;

/** The beginnings of keys that pages put together, and all that can come after each. */
final class KeyNames {
    private static final String APP = "org.cupwright.app.";
    private static final String ENGINE = "org.cupwright.";
    private static final String WINDS = "north northEast east southEast south southWest west northWest";

    private KeyNames() {}

    /** Names by beginnings. */
    static Map<String, Stream<String>> all() {
        Map<String, Stream<String>> names = new TreeMap<>(ofBegin());
        names.putAll(ofDays());
        names.putAll(ofWeeks());
        names.putAll(ofLog());
        names.putAll(ofRound());
        return names;
    }

    private static Map<String, Stream<String>> ofBegin() {
        Map<String, Stream<String>> drawn = Map.of(
                "begin.draw.",
                words("kind green bunker water"),
                "begin.grid.keep.",
                words("green bunker water"),
                "begin.grid.says.",
                words("green bunker water"),
                "begin.kept.",
                words("bunker water"));
        Map<String, Stream<String>> names = new TreeMap<>(drawn);
        names.put("course.known.", each(ENGINE + "green.RestsOn"));
        names.put("course.rests.", each(ENGINE + "green.RestsOn"));
        names.put("publicSheet.became.", each(APP + "desk.log.HolesCut$Became"));
        names.put("roundOf.start.", each(ENGINE + "round.StartType"));
        names.put("course.files.unit.", Stream.of(LengthUnit.values()).map(LengthUnit::symbol));
        names.putAll(Map.of(
                "begin.field.",
                words("name id zone longitude latitude file hole play corners unit length on left right width height"
                        + " firstEast firstNorth firstRight firstDown secondEast secondNorth secondRight secondDown"
                        + " frontEast frontNorth desk.language desk.units"),
                "begin.hint.",
                words("id zone longitude latitude corners play length"),
                "begin.language.",
                DeskPolicy.LANGUAGES.stream(),
                "begin.measure.",
                each(APP + "storage.SettingUp$Measure"),
                "begin.picture.point.",
                PictureStep.POINTS.stream(),
                "begin.step.",
                each(APP + "office.begin.Step"),
                "begin.units.",
                each(ENGINE + "units.UnitSystem"),
                "begin.way.",
                each(APP + "storage.SettingUp$Way"),
                "begin.wind.",
                words(WINDS),
                "begin.windShort.",
                words(WINDS)));
        return names;
    }

    private static Map<String, Stream<String>> ofDays() {
        Map<String, Stream<String>> names = new TreeMap<>(Map.of(
                "draw.form.",
                words("bunker water edge hazard round move"),
                "draw.hazard.",
                each(ENGINE + "course.Hazard$Kind"),
                "today.otherwise.",
                words("elsewhere inPlay left")));
        names.putAll(Map.of(
                "difficulty.",
                each(ENGINE + "holelocation.DifficultyClass"),
                "green.stands.",
                words("planned inPlay cut left"),
                "page.",
                words("today green weeks log course people"),
                "progress.",
                words("weeks files greens"),
                "roll.",
                each(ENGINE + "roll.RollEnd"),
                "sheet.convention.",
                each(ENGINE + "green.OnConvention"),
                "state.",
                each(APP + "storage.StoredPlan$State"),
                "today.done.",
                words("inPlay cut elsewhere left"),
                "verdict.",
                each(ENGINE + "holelocation.Verdict"),
                "way.",
                words("back backRight right frontRight front frontLeft left backLeft degrees")));
        return names;
    }

    private static Map<String, Stream<String>> ofWeeks() {
        return Map.of(
                "weeks.legend.",
                each(APP + "answers.WeekCell$Sign"),
                "weeks.means.",
                each(APP + "answers.WeekCell$Sign"),
                "weeks.sign.",
                each(APP + "answers.WeekCell$Sign"),
                "weeks.state.",
                each(APP + "storage.StoredPlan$State"),
                "weeks.term.",
                each(ENGINE + "rotation.Term"),
                "weeks.wish.",
                each(APP + "office.weeks.Wish$Kind"),
                "course.choice.",
                settings().flatMap(KeyNames::choices),
                "course.group.",
                Stream.concat(words("first"), settings().map(one -> one.key().replaceFirst("[.].*", ""))),
                "restsOn.",
                each(ENGINE + "green.RestsOn"),
                "setting.name.",
                settings().map(Setting::key));
    }

    private static Map<String, Stream<String>> ofRound() {
        return Map.of(
                "round.if.",
                words("high leans leansStill low stuck"),
                "round.then.",
                words("high leans leansStill low stuck"),
                "round.plug.",
                each(ENGINE + "turf.today.RecheckItem$Reason"),
                "round.work.",
                words("look spot straight hammer halfTurned halfHammered upper fullTurned fullHammered draw lower old"
                        + " wipe cup rim white clear halves plug roll knit water flag brush plugs marks last tools"),
                "turf.watering.",
                each(ENGINE + "turf.today.WateringItem$Reason"));
    }

    private static Map<String, Stream<String>> ofLog() {
        return Map.of(
                "log.choice.",
                parts().filter(part -> part.type().isEnum())
                        .flatMap(part -> each(part.type().getName()).map(one -> part.name() + "." + one)),
                "log.choice.severity.",
                each(ENGINE + "cupchange.CrewNote$Severity"),
                "log.is.",
                parts().filter(part -> part.type() == boolean.class).map(Part::name),
                "log.kind.",
                EntryForm.all().stream().map(EntryForm::kind),
                "log.not.",
                parts().filter(part -> part.type() == boolean.class)
                        .filter(part -> !part.optional() && !Draft.goesWithoutSaying(part))
                        .map(Part::name),
                "log.page.do.",
                each(APP + "office.log.Doing"),
                "log.page.hint.",
                words("Instant List"),
                "log.page.part.",
                parts().filter(part -> !part.isPlace()).map(Part::name),
                "rule.",
                Arrays.stream(RuleId.values()).map(RuleId::id),
                "survey.kind.",
                each(ENGINE + "green.SurveyKind"));
    }

    /** Parts that a form asks for: where the plan had the hole nobody types. */
    private static Stream<Part> parts() {
        return EntryForm.all().stream()
                .flatMap(form -> form.parts().stream())
                .filter(part -> !part.name().equals("planned"));
    }

    private static Stream<Setting<?>> settings() {
        return Settings.catalogue().settings().stream().map(setting -> (Setting<?>) setting);
    }

    /** What a setting can be that is one of a few. */
    private static Stream<String> choices(Setting<?> setting) {
        Message accepts = setting.type().accepts();
        return switch (accepts.key()) {
            case "accepts.yesNo" -> words("yes no");
            case "accepts.oneOf" ->
                Stream.of(((Message.Name) accepts.arguments().get(0)).text().split(", "));
            default -> Stream.of();
        };
    }

    private static Stream<String> words(String names) {
        return Stream.of(names.split(" "));
    }

    /** The constants of an enum, which its own package may keep to itself. */
    private static Stream<String> each(String type) {
        try {
            return Stream.of(Class.forName(type).getEnumConstants()).map(one -> EnumNames.lowerCamel((Enum<?>) one));
        } catch (ClassNotFoundException gone) {
            throw new IllegalStateException(gone);
        }
    }
}
