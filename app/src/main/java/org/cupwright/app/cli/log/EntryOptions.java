package org.cupwright.app.cli.log;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.cupwright.app.cli.command.Arguments;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What an entry of the logbook says, as options. */
final class EntryOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--radius", paramLabel = "M", description = "How far about the place the ground is meant, metres.")
    private Double radius;

    @Option(names = "--set", paramLabel = "PART=VALUE", description = "A part of what the entry says; repeatable.")
    private List<String> parts = new ArrayList<>();

    @Option(names = "--yes", description = "Keep it though it looks wrong.")
    private boolean sure;

    OptionalDouble radiusMetres() {
        return radius == null ? OptionalDouble.empty() : OptionalDouble.of(radius);
    }

    Map<String, String> parts() {
        Map<String, String> found = new LinkedHashMap<>();
        for (String part : parts) {
            int equals = part.indexOf('=');
            if (equals < 1) {
                throw new Arguments(spec).wrong("--set takes PART=VALUE, not '" + part + "'.", part);
            }
            String name = part.substring(0, equals).strip();
            if (found.put(name, part.substring(equals + 1).strip()) != null) {
                throw new Arguments(spec).wrong("--set gives '" + name + "' twice.", part);
            }
        }
        return found;
    }

    boolean sure() {
        return sure;
    }
}
