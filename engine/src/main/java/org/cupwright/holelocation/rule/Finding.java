package org.cupwright.holelocation.rule;

import java.util.Comparator;
import java.util.function.Function;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.spot.SpotGround;

/**
 * What a rule measured at one spot: numbers in the rule's unit, NaN where there is none.
 *
 * @param grade the outcome
 * @param word last part of the sentence's key
 * @param value what was measured
 * @param limit what it was held against
 * @param margin how far it is on the good side
 * @param error standard error of the value
 */
record Finding(Grade grade, String word, double value, double limit, double margin, double error) {
    private static final Comparator<Finding> BEST_FIRST = Comparator.<Finding>comparingInt(
                    finding -> finding.grade.badness())
            .thenComparing(Finding::margin, Comparator.reverseOrder());

    static Finding of(Grade grade, double value, double limit, double margin, double error) {
        return new Finding(grade, grade.word(), value, limit, margin, error);
    }

    /** Less is better. */
    static Finding atMost(Grade grade, double value, double limit, double error) {
        return of(grade, value, limit, limit - value, error);
    }

    /** More is better. */
    static Finding atLeast(Grade grade, double value, double limit) {
        return of(grade, value, limit, value - limit, Double.NaN);
    }

    /** An outcome without a number. */
    static Finding bare(Grade grade, String word) {
        return new Finding(grade, word, Double.NaN, Double.NaN, Double.NaN, Double.NaN);
    }

    static Finding notChecked() {
        return bare(Grade.of(Outcome.NOT_CHECKED), "notChecked");
    }

    Finding saying(String otherWord) {
        return new Finding(grade, otherWord, value, limit, margin, error);
    }

    /**
     * The worst of the ground about a position: the worst outcome, and of several such the one with the least margin.
     *
     * <p>The position itself must be known, or nothing is said. Spots that nobody measured are passed over: a level's reading speaks
     * for the ground about it. A gap in a survey is no such spot: beside one, what passes is a caution.
     */
    static Finding worst(JudgedPosition judged, Function<SpotGround, Finding> rule) {
        if (!judged.own().known()) {
            return notChecked();
        }
        Finding worst = rule.apply(judged.own());
        for (SpotGround spot : judged.about()) {
            if (spot.known()) {
                Finding next = rule.apply(spot);
                worst = BEST_FIRST.compare(worst, next) < 0 ? next : worst;
            }
        }
        if (worst.grade.outcome() == Outcome.PASS && judged.besideGap()) {
            return new Finding(Grade.of(Outcome.CAUTION), "gap", worst.value, worst.limit, worst.margin, worst.error);
        }
        return worst;
    }
}
