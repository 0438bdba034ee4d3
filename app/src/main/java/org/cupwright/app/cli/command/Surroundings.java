package org.cupwright.app.cli.command;

import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.function.Function;
import org.cupwright.app.storage.DataFolder;

/**
 * What the commands run in, so that a test can run them in surroundings of its own.
 *
 * @param out for results
 * @param err for problems and progress
 * @param clock for today and for when something was recorded
 * @param home the folder of the default data folder
 * @param folders opens the data folder at a path
 * @param asked puts a question to whoever sits there and answers what was typed; empty when nobody does
 * @param serving opens the pages
 */
public record Surroundings(
        PrintStream out,
        PrintStream err,
        Clock clock,
        Path home,
        Function<Path, DataFolder> folders,
        Function<String, Optional<String>> asked,
        Serving serving) {
    /** The same, where nothing that was written by others can do more to a terminal than be read. */
    public Surroundings withoutControls() {
        return new Surroundings(WithoutControls.of(out), WithoutControls.of(err), clock, home, folders, asked, serving);
    }

    /** Where nobody sits who could be asked. */
    public Surroundings(PrintStream out, PrintStream err, Clock clock, Path home, Function<Path, DataFolder> folders) {
        this(out, err, clock, home, folders, question -> Optional.empty());
    }

    /** Where no pages can be opened. */
    public Surroundings(
            PrintStream out,
            PrintStream err,
            Clock clock,
            Path home,
            Function<Path, DataFolder> folders,
            Function<String, Optional<String>> asked) {
        this(out, err, clock, home, folders, asked, (request, opened, errors) -> {
            throw new IllegalStateException("no pages here");
        });
    }
}
