package org.cupwright.app.field;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.cupwright.app.answers.JudgementText;
import org.cupwright.green.RestsOn;
import org.cupwright.holelocation.Judgement;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.EnumNames;

/**
 * What is said of a spot, in the fewest words that the phone makes sentences of: {@code
 * word|slope|plays|why|set aside|not today}. The last three may be several, with blanks between them.
 *
 * <ul>
 *   <li>word: the verdict as it is said, {@code saidToBeGood} where being good is a person's word;
 *   <li>slope: {@code unchecked} where nobody measured it;
 *   <li>plays: easier, medium, harder, or nothing;
 *   <li>why: what stands against a hole: the rules whose outcome is the verdict, each with what it says;
 *   <li>set aside: rules that are broken here and do not count today;
 *   <li>not today: why today's hole is not to be here, whatever the ground is like; see {@link OffToday}.
 * </ul>
 */
final class SaidOfGround {
    private static final String RULE = "rule.";

    private SaidOfGround() {}

    static String of(Judgement judged, List<String> notToday) {
        return String.join(
                "|",
                JudgementText.verdictName(judged),
                judged.restsOn() == RestsOn.OUTLINE ? "unchecked" : "",
                judged.difficulty().rank().map(EnumNames::lowerCamel).orElse(""),
                String.join(" ", why(judged)),
                judged.setAside().stream().map(RuleId::id).collect(Collectors.joining(" ")),
                String.join(" ", notToday));
    }

    private static List<String> why(Judgement judged) {
        List<String> why = new ArrayList<>();
        for (RuleResult rule : judged.rules()) {
            if (decides(judged.verdict(), rule.outcome()) && !judged.setAside().contains(rule.rule())) {
                why.add(rule.says().key().substring(RULE.length()));
            }
        }
        return why;
    }

    private static boolean decides(Verdict verdict, Outcome outcome) {
        return switch (verdict) {
            case FAIL -> outcome == Outcome.FAIL;
            case CAUTION -> outcome == Outcome.CAUTION;
            case PASS, NOT_SURVEYED -> false;
        };
    }
}
