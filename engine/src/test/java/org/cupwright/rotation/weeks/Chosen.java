package org.cupwright.rotation.weeks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.cupwright.rotation.candidate.Candidate;

/** Plans under work, for the tests of weeks: filled at random, and as {@link SlowWeeks} reads them. */
final class Chosen {
    private Chosen() {}

    /** Any spot that is offered, wherever any is. */
    static void fill(Choices choices, WeeksModel model, Random random) {
        for (int green = 0; green < model.greenCount(); green++) {
            for (int day = 0; day < model.dayCount(); day++) {
                int[] offered = model.table(green).offered(day);
                if (offered.length > 0) {
                    choices.put(green, day, offered[random.nextInt(offered.length)]);
                }
            }
        }
    }

    /** @param evenDays points for each per cent that a day is harder or easier than usual */
    static SlowWeeks slow(WeeksRequest request, WeeksModel model, Choices choices, double evenDays) {
        return new SlowWeeks(request, plan(choices, model), begins(model), evenDays);
    }

    static List<List<Optional<Candidate>>> plan(Choices choices, WeeksModel model) {
        List<List<Optional<Candidate>>> plan = new ArrayList<>();
        for (int green = 0; green < model.greenCount(); green++) {
            int of = green;
            plan.add(IntStream.range(0, model.dayCount())
                    .mapToObj(day -> model.table(of).find(choices.chosen(of, day)))
                    .toList());
        }
        return plan;
    }

    static List<List<Integer>> begins(WeeksModel model) {
        return IntStream.range(0, model.greenCount())
                .mapToObj(green -> model.table(green).stays())
                .map(stays -> IntStream.range(0, model.dayCount())
                        .map(stays::begin)
                        .boxed()
                        .toList())
                .toList();
    }

    /** Where the holes of a green are, day by day. */
    static List<Integer> spots(Choices choices, WeeksModel model, int green) {
        return IntStream.range(0, model.dayCount())
                .map(day -> choices.chosen(green, day))
                .boxed()
                .toList();
    }
}
