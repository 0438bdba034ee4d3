package org.cupwright.app.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import org.cupwright.app.desk.files.SourceFile;
import picocli.CommandLine.Option;

/** What commands about a day take beside the options of every command. */
public final class DayOptions {
    @Option(
            names = "--ground",
            paramLabel = "FILE",
            description = "What lies on the greens that day: closed or saved ground, old holes, plugs.")
    private Path ground;

    public Optional<SourceFile> ground() {
        return Optional.ofNullable(ground).map(SourceFile::at);
    }
}
