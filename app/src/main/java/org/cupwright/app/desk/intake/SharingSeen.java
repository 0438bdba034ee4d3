package org.cupwright.app.desk.intake;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.green.SharedAmplitude;
import org.cupwright.green.strips.StripTold;
import org.cupwright.green.strips.StripTold.Why;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Measure;
import org.cupwright.message.Message.Translated;
import org.cupwright.policy.EnumNames;

/** Says what ground that was covered twice has told of the errors that points share, or why it tells nothing. */
final class SharingSeen {
    private SharingSeen() {}

    /** One finding for all greens on which it was measured, and one for each reason why it was not. */
    static List<Finding> of(List<SurveyCheck> checks) {
        List<SurveyCheck> usable = checks.stream().filter(SurveyCheck::usable).toList();
        List<Finding> findings = new ArrayList<>();
        findings.addAll(
                of(usable, SurveyCheck::surveys, FindingKind.SURVEYS_MEASURED, FindingKind.SURVEYS_TELL_NOTHING));
        findings.addAll(of(usable, SurveyCheck::strips, FindingKind.STRIPS_MEASURED, FindingKind.STRIPS_TELL_NOTHING));
        return findings;
    }

    private static List<Finding> of(
            List<SurveyCheck> checks,
            Function<SurveyCheck, Optional<StripTold>> what,
            FindingKind measured,
            FindingKind tellNothing) {
        List<StripTold> told =
                checks.stream().map(what).flatMap(Optional::stream).toList();
        List<Finding> findings = new ArrayList<>();
        double[] millimetres = told.stream()
                .flatMap(of -> of.measured().stream())
                .mapToDouble(SharedAmplitude::sigmaMetres)
                .map(metres -> 1000 * metres)
                .sorted()
                .toArray();
        if (millimetres.length > 0) {
            findings.add(Finding.of(measured, Where.file(), millimetres.length)
                    .saying(amount(millimetres[0]), amount(millimetres[millimetres.length - 1])));
        }
        Map<Why, Integer> nothing = new EnumMap<>(Why.class);
        told.stream().filter(of -> of.measured().isEmpty()).forEach(of -> nothing.merge(of.why(), 1, Integer::sum));
        nothing.forEach((why, greens) ->
                findings.add(Finding.of(tellNothing, Where.file(), reason(why)).saying(new Count(greens))));
        return findings;
    }

    private static Measure amount(double millimetres) {
        return new Measure(millimetres, 1, "mm");
    }

    private static Translated reason(Why why) {
        return new Translated("survey.twice." + EnumNames.lowerCamel(why));
    }
}
