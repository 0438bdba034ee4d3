package org.cupwright.app.cli.command;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** Which holes a list or a round is about. */
public final class HolesOption {
    @Option(
            names = "--hole",
            paramLabel = "H",
            split = ",",
            description = "The hole, several with commas between, or all. Default: all.")
    private List<String> holes = new ArrayList<>();

    /** Those that were named; none where all are meant. */
    public List<String> named() {
        return holes;
    }
}
