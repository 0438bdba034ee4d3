package org.cupwright.app.desk.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.files.FileFinding;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.desk.intake.ImportRequest.SurveyOptions;
import org.cupwright.app.desk.intake.ImportResult.Points;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.Course;
import org.cupwright.formats.points.GreenPoints;
import org.cupwright.policy.Policy;

/**
 * Reads survey files, and fits each green once to say what they are good for. Nothing is stored.
 *
 * @param course whose greens the points are shared out to
 * @param policy how what was measured is taken
 */
record SurveyIntake(Session session, Course course, Policy policy) {
    /**
     * What the files hold.
     *
     * @param points how many points, by class
     * @param surveys those from which a ground could be made
     * @param findings what the person should know
     * @param unit the symbol of the unit they are in
     */
    record Taken(Points points, List<GreenSurvey> surveys, List<FileFinding> findings, String unit) {}

    Taken take(List<SourceFile> files, SurveyOptions options, Progress progress) {
        SurveyReading reading = new SurveyReading(course, options);
        GreenPoints points = reading.read(files, progress);
        String names = SurveyReading.names(files);
        List<FileFinding> findings = new ArrayList<>();
        points.findings().forEach(finding -> findings.add(new FileFinding(names, finding)));
        List<GreenSurvey> surveys = course.holes().stream()
                .flatMap(hole -> points.find(hole.id()).map(cloud -> reading.survey(hole.id(), cloud, files)).stream())
                .toList();
        List<SurveyCheck> checks = checks(surveys, options.unchanged(), progress);
        List<GreenSurvey> usable = usable(checks, findings);
        SharingSeen.of(checks).forEach(finding -> findings.add(new FileFinding(names, finding)));
        KindAssumed.of(usable).forEach(finding -> findings.add(new FileFinding(names, finding)));
        Points counts = new Points(points.read(), points.kept(), points.byClass());
        return new Taken(counts, usable, findings, reading.unit().symbol());
    }

    /** Fits every green once, side by side. */
    private List<SurveyCheck> checks(List<GreenSurvey> surveys, boolean unchanged, Progress progress) {
        Map<String, EarlierSurvey> earlier = unchanged ? session.read(stores -> earlier(stores, surveys)) : Map.of();
        return progress.sideBySide("greens", surveys, survey -> {
            Optional<EarlierSurvey> before = Optional.ofNullable(earlier.get(survey.hole()));
            return SurveyCheck.of(course.find(survey.hole()).orElseThrow(), survey, before, policy);
        });
    }

    private Map<String, EarlierSurvey> earlier(Stores stores, List<GreenSurvey> surveys) {
        Map<String, EarlierSurvey> earlier = new TreeMap<>();
        surveys.forEach(survey -> earlier.put(survey.hole(), EarlierSurvey.of(stores, course.id(), survey)));
        return earlier;
    }

    private static List<GreenSurvey> usable(List<SurveyCheck> checks, List<FileFinding> findings) {
        List<GreenSurvey> usable = new ArrayList<>();
        for (SurveyCheck check : checks) {
            String file = check.survey().origin().file();
            check.findings().forEach(found -> findings.add(new FileFinding(file, found.finding(), found.area())));
            if (check.usable()) {
                usable.add(check.survey());
            }
        }
        return usable;
    }
}
