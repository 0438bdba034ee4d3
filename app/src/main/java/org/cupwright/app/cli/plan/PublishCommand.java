package org.cupwright.app.cli.plan;

import org.cupwright.app.answers.json.Json;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.plan.PublishPlan;
import org.cupwright.app.desk.plan.PublishPlan.Answer;
import org.cupwright.app.desk.plan.PublishPlan.Step;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import tools.jackson.databind.node.ObjectNode;

/** Publishes a day's plan. */
@Command(name = "publish", description = "Publishes the day's plan, or withdraws it again.")
public final class PublishCommand extends CourseCommand {
    @Option(names = "--withdraw", description = "Make a published plan a draft again, so that it can be planned anew.")
    private boolean withdraw;

    @Override
    protected void run(Task task) {
        PublishPlan publish = new PublishPlan(task.session());
        Answer answer = publish.take(
                withdraw ? Step.WITHDRAW : Step.PUBLISH, task.options().date());
        task.print(task.options().json() ? Json.document(json(answer)) : line(task.texts(), answer));
    }

    private static String line(Texts texts, Answer answer) {
        String state = EnumNames.lowerCamel(answer.plan().state());
        String key = (answer.changed() ? "publish.now." : "publish.already.") + state;
        return texts.say(key, answer.course().name(), texts.day(answer.plan().date()));
    }

    private static ObjectNode json(Answer answer) {
        ObjectNode node = Json.object();
        node.put("course", answer.course().id());
        node.put("date", answer.plan().date().toString());
        node.put("state", EnumNames.lowerCamel(answer.plan().state()));
        node.put("changed", answer.changed());
        return node;
    }
}
