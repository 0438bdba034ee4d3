package org.cupwright.app.cli.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.answers.json.Shape;
import org.cupwright.app.answers.json.Shapes;
import org.cupwright.app.cli.command.CourseCommand;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.desk.entry.typed.Draft;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.entry.typed.Part;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.texts.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Shows what can be entered. */
@Command(name = "kinds", description = "Shows the kinds of entries and what each can say.")
final class LogKindsCommand extends CourseCommand {
    @Parameters(paramLabel = "KIND", arity = "0..1", description = "One kind only.")
    private String kind;

    @Override
    protected void run(Task task) {
        List<EntryForm> forms = kind == null ? EntryForm.all() : List.of(EntryForm.of(kind));
        Texts texts = task.texts();
        if (task.options().json()) {
            task.print(Json.document(new Shapes(texts)
                    .tree(new Shape().with("kinds", forms.stream().map(LogKindsCommand::shape)))));
            return;
        }
        for (EntryForm form : forms) {
            task.print(Layout.left(LogProblems.typed(form.kind()), 22) + texts.say("log.kind." + form.kind()));
            form.parts().stream()
                    .flatMap(part -> Layout.wrapped("    ", line(texts, form, part)).stream())
                    .forEach(task::print);
        }
    }

    private static String line(Texts texts, EntryForm form, Part part) {
        List<String> notes = new ArrayList<>();
        if (form.place().equals(Optional.of(part))) {
            notes.add("--on P --side L5 | --at E,N");
        }
        if (part.name().equals(Photo.PART)) {
            notes.add("--photo FILE");
        }
        if (!part.choices().isEmpty()) {
            notes.add(String.join(" | ", part.choices()));
        }
        String must = isOptional(part) ? "" : " " + texts.say("log.must");
        return Layout.left(part.name(), 24) + String.join(" ", notes) + must;
    }

    private static boolean isOptional(Part part) {
        return part.optional() || Draft.goesWithoutSaying(part);
    }

    private static Shape shape(EntryForm form) {
        Stream<Shape> parts = form.parts().stream()
                .map(part -> new Shape()
                        .with("part", part.name())
                        .with("place", form.place().equals(Optional.of(part)))
                        .with("optional", isOptional(part))
                        .with("choices", part.choices()));
        return new Shape().with("kind", form.kind()).with("parts", parts);
    }
}
