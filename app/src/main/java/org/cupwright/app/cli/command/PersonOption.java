package org.cupwright.app.cli.command;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Who says it. */
public final class PersonOption {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--person", paramLabel = "NAME", description = "Who says so. Default: your name on this machine.")
    private String person;

    public boolean isGiven() {
        return person != null;
    }

    /** The one who was named, or whose machine it is. */
    public String name() {
        String known = person == null ? System.getProperty("user.name", "") : person;
        if (known.isBlank()) {
            throw new Arguments(spec).wrong("Who says so? Give --person NAME.", "");
        }
        return known.strip();
    }
}
