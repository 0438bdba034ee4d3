package org.cupwright.app.cli.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.EntryKinds;
import org.cupwright.app.desk.entry.EntryKinds.Kind;
import org.cupwright.app.desk.entry.EntryKinds.PartOf;
import org.cupwright.app.texts.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import tools.jackson.databind.node.ObjectNode;

/** Shows what can be entered. */
@Command(name = "kinds", description = "Shows the kinds of entries and what each can say.")
final class LogKindsCommand extends CourseCommand {
    @Parameters(paramLabel = "KIND", arity = "0..1", description = "One kind only.")
    private String kind;

    @Override
    protected void run(Task task) {
        List<Kind> kinds = EntryKinds.of(Optional.ofNullable(kind));
        if (task.options().json()) {
            ObjectNode node = Json.object();
            node.set(
                    "kinds",
                    Json.array(kinds.stream().map(LogKindsCommand::json).toList()));
            task.print(Json.document(node));
            return;
        }
        Texts texts = task.texts();
        for (Kind each : kinds) {
            task.print(Layout.left(each.typed(), 22) + texts.say("log.kind." + each.kind()));
            each.parts()
                    .forEach(part -> Layout.wrapped("    ", line(texts, part)).forEach(task::print));
        }
    }

    private static String line(Texts texts, PartOf part) {
        List<String> notes = new ArrayList<>();
        if (part.place()) {
            notes.add("--on P --side L5 | --at E,N");
        }
        if (part.name().equals("photo")) {
            notes.add("--photo FILE");
        }
        if (!part.choices().isEmpty()) {
            notes.add(String.join(" | ", part.choices()));
        }
        String must = part.optional() ? "" : " " + texts.say("log.must");
        return Layout.left(part.name(), 24) + String.join(" ", notes) + must;
    }

    private static ObjectNode json(Kind kind) {
        ObjectNode node = Json.object();
        node.put("kind", kind.kind());
        node.set(
                "parts",
                Json.array(kind.parts().stream().map(LogKindsCommand::json).toList()));
        return node;
    }

    private static ObjectNode json(PartOf part) {
        ObjectNode node = Json.object();
        node.put("part", part.name());
        node.put("place", part.place());
        node.put("optional", part.optional());
        node.set("choices", Json.texts(part.choices()));
        return node;
    }
}
