package org.cupwright.app.cli.plan;

import org.cupwright.app.answers.WhyText;
import org.cupwright.app.answers.json.PlanJson;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.plan.ExplainHole;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Says on one page why a hole was where it was. */
@Command(
        name = "explain",
        description = "Says on one page why a hole is, or was, where it is on a day: the plan, who cut it, the rules.")
public final class ExplainCommand extends CourseCommand {
    @Option(names = "--hole", paramLabel = "H", required = true, description = "The hole.")
    private String hole;

    @Override
    protected void run(Task task) {
        ExplainHole.Answer answer = new ExplainHole(task.session()).of(task.question(), hole);
        task.answer(
                () -> new PlanJson(answer.told().day(), task.texts()).why(answer),
                () -> new WhyText(task.texts(), answer.told()).lines(answer));
    }
}
