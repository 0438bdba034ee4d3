package org.cupwright.app.cli.plan;

import org.cupwright.app.answers.PlanText;
import org.cupwright.app.answers.json.PlanJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.command.YesOption;
import org.cupwright.app.desk.plan.PublishPlan;
import org.cupwright.app.desk.plan.PublishPlan.Answer;
import org.cupwright.app.desk.plan.PublishPlan.Step;
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
        Answer answer = publish.take(withdraw ? Step.WITHDRAW : Step.PUBLISH, task.date(), yes.given());
        task.answer(() -> PlanJson.published(answer, task.texts()), () -> new PlanText(task.texts()).published(answer));
    }
}
