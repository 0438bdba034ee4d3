package org.cupwright.app.office.weeks;

import java.time.LocalDate;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.app.desk.plan.SeenPlans;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;

/** The plans that were seen, as a form carries them: {@code 2026-06-20=12 2026-06-21=0}. */
final class SeenField {
    private SeenField() {}

    static String of(SeenPlans seen) {
        return seen.numbers().entrySet().stream()
                .map(one -> one.getKey() + "=" + one.getValue())
                .collect(Collectors.joining(" "));
    }

    /** Of days from the first on, so many; what is said of others is not asked for. */
    static SeenPlans read(String text, LocalDate first, int days) {
        try {
            Map<LocalDate, Long> numbers = new TreeMap<>();
            Stream.of(text.strip().split("\\s+"))
                    .filter(one -> !one.isEmpty())
                    .map(one -> one.split("=", 2))
                    .forEach(one -> numbers.put(LocalDate.parse(one[0]), Long.valueOf(one[1])));
            numbers.keySet().removeIf(day -> day.isBefore(first) || !day.isBefore(first.plusDays(days)));
            return new SeenPlans(numbers);
        } catch (RuntimeException wrong) {
            throw Problem.of(Message.of("problem.seenPlans"), Message.of("try.plansChanged"));
        }
    }
}
