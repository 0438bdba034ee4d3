package org.cupwright.app.cli.log;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.app.cli.command.Arguments;
import org.cupwright.app.desk.Spot;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What an entry of the logbook says, as options. */
final class EntryOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--at", paramLabel = "E,N", description = "The place, in the course's frame.")
    private String at;

    @Option(names = "--on", paramLabel = "P", description = "The place: paces on.")
    private Double on;

    @Option(names = "--side", paramLabel = "L5", description = "The place: paces from the left (L) or right (R) edge.")
    private String side;

    @Option(names = "--radius", paramLabel = "M", description = "How far about the place the ground is meant, metres.")
    private Double radius;

    @Option(names = "--set", paramLabel = "PART=VALUE", description = "A part of what the entry says; repeatable.")
    private List<String> parts = new ArrayList<>();

    @Option(names = "--person", paramLabel = "NAME", description = "Who says so. Default: your name on this machine.")
    private String person;

    @Option(names = "--yes", description = "Keep it though it looks wrong.")
    private boolean sure;

    Optional<Spot> where() {
        Arguments arguments = new Arguments(spec);
        if (at != null && (on != null || side != null)) {
            throw arguments.wrong("Give the place by --at or by --on and --side, not both.", at);
        }
        if ((on == null) != (side == null)) {
            throw arguments.wrong("--on and --side go together, as --on 12 --side L5.", "");
        }
        if (at != null) {
            return Optional.of(new Spot.At(arguments.point("--at", at)));
        }
        return on == null ? Optional.empty() : Optional.of(arguments.paced(on, side));
    }

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

    String person() {
        return new Arguments(spec).person(person);
    }

    boolean sure() {
        return sure;
    }
}
