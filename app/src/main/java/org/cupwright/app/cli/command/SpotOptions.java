package org.cupwright.app.cli.command;

import java.util.Optional;
import org.cupwright.app.desk.Spot;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A place on a green, as options. */
public final class SpotOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--at", paramLabel = "E,N", description = "The place, in the course's frame.")
    private String at;

    @Option(names = "--on", paramLabel = "P", description = "The place by paces on; with --side.")
    private Double on;

    @Option(
            names = "--side",
            paramLabel = "L5",
            description = "Paces from the left (L) or right (R) edge, as seen from the fairway; with --on.")
    private String side;

    /** The place; empty when none was given. */
    public Optional<Spot> find() {
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

    /** The place, which has to be given. */
    public Spot get() {
        return find().orElseThrow(() ->
                new Arguments(spec).wrong("Say where: --on 12 --side L5, or --at E,N in the course's frame.", ""));
    }
}
