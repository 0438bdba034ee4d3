package org.cupwright.app.cli.plan;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** Where a day's paper is written. */
final class OutOption {
    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "paper",
            description = "The folder for the papers; it is made when it is not there. Default: paper, in this folder.")
    private Path folder;

    Path folder() {
        return folder;
    }
}
