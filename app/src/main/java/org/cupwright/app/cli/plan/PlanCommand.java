package org.cupwright.app.cli.plan;

import java.time.Duration;
import java.util.Optional;
import org.cupwright.app.answers.PlanText;
import org.cupwright.app.answers.WeeksText;
import org.cupwright.app.answers.json.PlanJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.DayOptions;
import org.cupwright.app.cli.command.PersonOption;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.command.Version;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.plan.HoleWish;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.desk.plan.PlanWeeks;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Decides the hole locations of a day. */
@Command(name = "plan", description = "Decides the day's hole locations, says why, and keeps them as a draft.")
public final class PlanCommand extends CourseCommand {
    private static final int MOST_SECONDS = 3600;

    @Mixin
    private DayOptions day;

    @Mixin
    private WishOptions wish;

    @Mixin
    private PersonOption person;

    @Option(
            names = "--days",
            paramLabel = "K",
            defaultValue = "1",
            description = "How many days to plan together, from that day on; at most 84.")
    private int days;

    @Option(
            names = "--budget-seconds",
            paramLabel = "S",
            description = "With --days: how long the search may take at most; the plan is the best found by then.")
    private Double budgetSeconds;

    @Override
    protected void run(Task task) {
        Optional<HoleWish> wanted = wish.find();
        if (budgetSeconds != null && (days == 1 || !(budgetSeconds > 0 && budgetSeconds <= MOST_SECONDS))) {
            throw wrong(
                    "--budget-seconds goes with --days, and takes seconds above 0 and at most 3600.",
                    "" + budgetSeconds);
        }
        if (days != 1) {
            weeks(task, wanted);
            return;
        }
        PlanDay plan = new PlanDay(wanted.isPresent() ? task.session(person) : task.session(), Version.text());
        DayQuestion question = task.question(day);
        long seed = task.options().seed();
        answer(
                task,
                wanted.map(one -> plan.plan(question, one, seed, task.progress()))
                        .orElseGet(() -> plan.plan(question, seed, task.progress())));
    }

    private void weeks(Task task, Optional<HoleWish> wanted) {
        if (wanted.isPresent() || day.ground().isPresent()) {
            throw wrong("A wish for a hole, and --ground, are of one day: leave out --days, or them.", "" + days);
        }
        PlanWeeks.Answer answer = new PlanWeeks(task.session(), Version.text())
                .plan(task.question(day), days, task.options().seed(), budget(), task.progress());
        task.answer(
                () -> new PlanJson(answer.day(), task.texts()).weeks(answer),
                () -> new WeeksText(task.texts()).lines(answer));
    }

    private Optional<Duration> budget() {
        return Optional.ofNullable(budgetSeconds)
                .map(seconds -> Duration.ofMillis(Math.max(1, Math.round(seconds * 1000))));
    }

    static void answer(Task task, PlanDay.Answer answer) {
        task.answer(
                () -> new PlanJson(answer.day(), task.texts()).plan(answer),
                () -> new PlanText(task.texts()).lines(answer));
    }
}
