package org.cupwright.app.office.weeks;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;
import org.cupwright.rotation.Term;

/** What every wish of the plans came to over all days, beside what no plan of a day could be better than. */
record BoundsRows(Texts texts) {
    /**
     * A wish.
     *
     * @param wish what is wished, in words
     * @param is what it came to, in its own unit
     * @param least the sum of each day's bound, were it the day's only wish
     */
    record Row(String wish, String is, String least) {}

    List<Row> of(List<StoredPlan> plans) {
        return plans.isEmpty()
                ? List.of()
                : Stream.of(Term.values()).map(term -> row(term, plans)).toList();
    }

    private Row row(Term term, List<StoredPlan> plans) {
        String name = EnumNames.lowerCamel(term);
        return new Row(
                texts.say("weeks.term." + name),
                amount(term, sum(plans, name, StoredPlan::terms)),
                amount(term, sum(plans, name, StoredPlan::bounds)));
    }

    private static double sum(List<StoredPlan> plans, String name, Function<StoredPlan, Map<String, Double>> what) {
        return plans.stream()
                .mapToDouble(plan -> what.apply(plan).getOrDefault(name, 0.0))
                .sum();
    }

    private String amount(Term term, double sum) {
        return term.unit() == Term.Unit.METRES ? texts.length(sum) : texts.number(sum, 0);
    }
}
