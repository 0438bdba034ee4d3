package org.cupwright.app.cli.command;

import java.util.Optional;
import java.util.stream.Collectors;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.message.Problem;
import org.cupwright.units.Paces;
import org.cupwright.units.UnitSystem;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import tools.jackson.databind.node.ObjectNode;

/** What is said, and which status is given, when a command is not carried out. */
public record Failures(Surroundings surroundings, CupwrightCommand options, boolean json) {
    public static final int MENDABLE = 1;
    public static final int WRONG_USAGE = 2;
    public static final int DEFECT = 3;

    public int execution(Exception failure) {
        if (failure instanceof Problem problem) {
            return mendable(problem);
        }
        if (failure instanceof ParameterException wrong) {
            return usage(wrong);
        }
        return defect(failure);
    }

    public int usage(ParameterException wrong) {
        CommandLine line = wrong.getCommandLine();
        String help = line.getCommandSpec().qualifiedName() + " --help";
        Texts words = words();
        String value = wrong instanceof CommandLine.UnmatchedArgumentException unmatched
                ? String.join(" ", unmatched.getUnmatched())
                : Optional.ofNullable(wrong.getValue()).orElse("");
        tell(wrong.getMessage(), words.say("field.request"), value, words.say("try.usage", help));
        return WRONG_USAGE;
    }

    private int mendable(Problem problem) {
        Texts words = words();
        tell(
                words.say(problem.what()),
                problem.where().stream().map(words::say).collect(Collectors.joining(", ")),
                words.show(problem.value()),
                words.say(problem.tryThis()));
        return MENDABLE;
    }

    /** Writes the details of a defect of ours to a file and says where. */
    public int defect(Throwable failure) {
        String written = new DefectReport(surroundings).write(options.data(surroundings.home()), failure);
        Texts words = words();
        tell(words.say("problem.defect"), written, failure.getClass().getSimpleName(), words.say("try.defect"));
        return DEFECT;
    }

    private void tell(String what, String where, String value, String tryThis) {
        if (json) {
            ObjectNode error = Json.object();
            error.put("error", what);
            error.put("where", where);
            error.put("value", value);
            error.put("tryThis", tryThis);
            surroundings.out().println(Json.document(error));
        } else {
            surroundings.err().println(what);
            line("where", where);
            line("value", value);
            line("try", tryThis);
        }
    }

    private void line(String name, String text) {
        if (!text.isBlank()) {
            String label = Layout.left(words().say("label." + name), 7);
            String indent = " ".repeat(2 + label.length());
            String block = String.join(System.lineSeparator(), Layout.wrapped(indent, text));
            surroundings.err().println("  " + label + block.strip());
        }
    }

    private Texts words() {
        UnitSystem units = options.units().orElse(UnitSystem.PACES);
        return options.languageOfFailures()
                .flatMap(language -> Texts.find(language, Door.COMMANDS, units, Paces.STANDARD_METRES))
                .or(() -> Texts.find("en", Door.COMMANDS, units, Paces.STANDARD_METRES))
                .orElseThrow();
    }
}
