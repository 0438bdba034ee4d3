package org.cupwright.app.desk.intake;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.cupwright.app.storage.GreenSurvey;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.green.KindGuess;
import org.cupwright.green.SurveyKind;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Translated;
import org.cupwright.policy.EnumNames;

/** Says for what kind a survey is taken that nobody told the kind of. */
final class KindAssumed {
    private KindAssumed() {}

    /** One finding for each kind that was assumed, with the number of greens. */
    static List<Finding> of(List<GreenSurvey> surveys) {
        Map<SurveyKind, Integer> greens = new EnumMap<>(SurveyKind.class);
        surveys.stream()
                .filter(survey -> survey.points().kind().isEmpty())
                .forEach(survey -> greens.merge(KindGuess.of(survey.points()), 1, Integer::sum));
        return greens.entrySet().stream()
                .map(entry -> Finding.of(FindingKind.SURVEY_KIND_ASSUMED, Where.file(), word(entry.getKey()))
                        .saying(new Count(entry.getValue())))
                .toList();
    }

    private static Translated word(SurveyKind kind) {
        return new Translated("survey.kind." + EnumNames.lowerCamel(kind));
    }
}
