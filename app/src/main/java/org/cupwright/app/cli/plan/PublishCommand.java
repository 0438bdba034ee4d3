package org.cupwright.app.cli.plan;

import org.cupwright.app.answers.json.Json;
import org.cupwright.app.cli.command.CupwrightCommand;
import org.cupwright.app.cli.command.Surroundings;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.plan.PublishPlan;
import org.cupwright.app.desk.plan.PublishPlan.Answer;
import org.cupwright.app.desk.plan.PublishPlan.Step;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import tools.jackson.databind.node.ObjectNode;

/** Publishes a day's plan. */
@Command(name = "publish", description = "Publishes the day's plan, or withdraws it again.")
public final class PublishCommand implements Runnable {
    private final Surroundings surroundings;

    @ParentCommand
    private CupwrightCommand options;

    @Option(names = "--withdraw", description = "Make a published plan a draft again, so that it can be planned anew.")
    private boolean withdraw;

    public PublishCommand(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    @Override
    public void run() {
        Task task = new Task(options, surroundings);
        PublishPlan publish = new PublishPlan(task.folder(), surroundings.clock());
        Answer answer = publish.take(withdraw ? Step.WITHDRAW : Step.PUBLISH, options.course(), options.date());
        task.print(options.json() ? Json.document(json(answer)) : line(task.texts(), answer));
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
