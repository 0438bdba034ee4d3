package org.cupwright.app.cli.plan;

import java.util.Optional;
import org.cupwright.app.answers.PlanText;
import org.cupwright.app.answers.json.PlanJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.command.YesOption;
import org.cupwright.app.desk.plan.PublishPlan;
import org.cupwright.app.desk.plan.PublishPlan.Answer;
import org.cupwright.app.desk.plan.PublishPlan.Step;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.storage.StoredPlan.State;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Publishes a day's plan. */
@Command(name = "publish", description = "Publishes the day's plan, or withdraws it again.")
public final class PublishCommand extends CourseCommand {
    @Option(names = "--withdraw", description = "Make a published plan a draft again, so that it can be planned anew.")
    private boolean withdraw;

    @Mixin
    private YesOption yes;

    @Override
    protected void run(Task task) {
        PublishPlan publish = new PublishPlan(task.session());
        if (withdraw || yes.given() || task.options().json()) {
            answer(task, publish.take(withdraw ? Step.WITHDRAW : Step.PUBLISH, task.date(), yes.given()));
        } else {
            ask(task, publish);
        }
    }

    /** Asks about holes near each other on one green, if anybody sits there; else the plan is refused for them. */
    private static void ask(Task task, PublishPlan publish) {
        StoredPlan seen = publish.standing(task.date());
        Optional<Boolean> agreed = PublishPlan.nearOnSharedGreens(seen)
                .filter(near -> seen.state() == State.DRAFT)
                .flatMap(near ->
                        task.ask(task.texts().say(near) + " " + task.texts().say("publish.asks")));
        if (agreed.isEmpty()) {
            answer(task, publish.take(Step.PUBLISH, task.date(), false));
        } else if (agreed.get()) {
            answer(task, publish.publish(seen));
        } else {
            task.print(task.texts().say("publish.left"));
        }
    }

    private static void answer(Task task, Answer answer) {
        task.answer(() -> PlanJson.published(answer, task.texts()), () -> new PlanText(task.texts()).published(answer));
    }
}
