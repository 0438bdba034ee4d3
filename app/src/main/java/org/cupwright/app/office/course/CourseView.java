package org.cupwright.app.office.course;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.cupwright.app.answers.FindingText;
import org.cupwright.app.answers.PlaceText;
import org.cupwright.app.desk.findings.FindDoubts;
import org.cupwright.app.desk.findings.GreenFindings;
import org.cupwright.app.desk.findings.KnowGround;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Course;
import org.cupwright.green.RestsOn;
import org.cupwright.policy.EnumNames;

/** The course in the words and the order of its page. */
record CourseView(Texts texts) {
    /**
     * The page.
     *
     * @param name the course's
     * @param says how large it is
     * @param rests on what how many greens rest
     * @param bare whether no bunker, water or fall-off is drawn by any green
     * @param greens green by green
     * @param frame in which coordinates and times are
     */
    record Page(String name, String says, List<String> rests, boolean bare, List<Row> greens, String frame) {}

    /**
     * A green.
     *
     * @param hole the hole
     * @param area its size
     * @param restsOn what the knowledge of its ground rests on
     * @param kind how its newest survey was made; empty where there is none, or nobody said
     * @param points how many points that has; empty where there is none
     * @param day when that came in
     * @param readings how many level readings it has
     * @param hazards how many bunkers, waters and fall-offs are drawn by it
     */
    record Row(
            String hole,
            String area,
            String restsOn,
            String kind,
            String points,
            String day,
            int readings,
            int hazards) {}

    Page of(KnowGround.Answer answer) {
        Course course = answer.day().course();
        ZoneId zone = course.frame().zone();
        return new Page(
                course.name(),
                texts.say("course.says", answer.greens().size(), texts.area(answer.areaSquareMetres())),
                rests(answer),
                course.holes().stream().allMatch(hole -> hole.hazards().isEmpty()),
                answer.greens().stream().map(green -> row(green, zone)).toList(),
                texts.say("course.exact.frame", Integer.toString(course.frame().epsg()), zone));
    }

    private List<String> rests(KnowGround.Answer answer) {
        return Stream.of(RestsOn.SURVEY, RestsOn.LEVELS, RestsOn.OUTLINE)
                .map(what -> {
                    long greens = answer.greens().stream()
                            .filter(green -> green.restsOn() == what)
                            .count();
                    return greens == 0 ? "" : texts.say("course.rests." + EnumNames.lowerCamel(what), greens);
                })
                .filter(says -> !says.isEmpty())
                .toList();
    }

    private Row row(KnowGround.OfGreen green, ZoneId zone) {
        Optional<SurveyVersion> newest = green.surveys().stream().reduce((older, newer) -> newer);
        return new Row(
                green.hole().id(),
                texts.area(green.hole().green().areaSquareMetres()),
                texts.say("course.known." + EnumNames.lowerCamel(green.restsOn())),
                newest.flatMap(SurveyVersion::kind)
                        .map(kind -> texts.say("survey.kind." + EnumNames.lowerCamel(kind)))
                        .orElse(""),
                newest.map(survey -> texts.number(survey.points(), 0)).orElse(""),
                newest.map(survey -> texts.day(survey.recordedAt().atZone(zone).toLocalDate()))
                        .orElse(""),
                green.readings(),
                green.hole().hazards().size());
    }

    /**
     * What is doubtful about a green.
     *
     * @param hole the hole
     * @param says on what it rests and how much is doubtful
     * @param count how much that is
     * @param alike kind by kind, the worst first
     */
    record Doubts(String hole, String says, int count, List<FindingText.Alike> alike) {}

    /**
     * Greens about which as many things are doubtful.
     *
     * @param says how many
     * @param holes their holes, in round order
     */
    record Counted(String says, List<String> holes) {}

    /** Greens by how much is doubtful about them, the worst first; those about which nothing is are left out. */
    List<Counted> counted(List<Doubts> doubts) {
        Map<Integer, List<String>> holes = new TreeMap<>(Comparator.reverseOrder());
        doubts.stream()
                .filter(green -> green.count() > 0)
                .forEach(green -> holes.computeIfAbsent(green.count(), any -> new ArrayList<>())
                        .add(green.hole()));
        return holes.entrySet().stream()
                .map(same -> new Counted(
                        texts.say(
                                "course.doubts.count",
                                same.getKey(),
                                same.getValue().size()),
                        same.getValue()))
                .toList();
    }

    List<Doubts> doubts(FindDoubts.Answer answer) {
        PlaceText places =
                new PlaceText(texts, answer.day().course(), answer.day().policy());
        return answer.greens().stream().map(green -> doubts(green, places)).toList();
    }

    private Doubts doubts(GreenFindings green, PlaceText places) {
        String says = texts.say(
                "findings.green",
                green.hole().id(),
                texts.say("restsOn." + EnumNames.lowerCamel(green.restsOn())),
                green.readings(),
                green.findings().size());
        List<FindingText.Alike> alike = new FindingText(texts).alike(green, places);
        return new Doubts(green.hole().id(), says, green.findings().size(), alike);
    }
}
