package org.cupwright.app.cli.command;

import org.cupwright.app.desk.Spot;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A place on a green that has to be given, as options. */
public final class SpotOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--at", paramLabel = "E,N", description = "The place, in the course's frame.")
    private String at;

    @Option(names = "--on", paramLabel = "P", description = "The place: paces on; with --side.")
    private Double on;

    @Option(
            names = "--side",
            paramLabel = "L5",
            description = "Paces from the left (L) or right (R) edge, as seen from the fairway; with --on.")
    private String side;

    public Spot get() {
        Arguments arguments = new Arguments(spec);
        boolean paced = on != null && side != null;
        boolean neither = on == null && side == null;
        if (at != null ? !neither : !paced) {
            throw arguments.wrong("Say where: --on 12 --side L5, or --at E,N in the course's frame.", "");
        }
        return at != null ? new Spot.At(arguments.point("--at", at)) : arguments.paced(on, side);
    }
}
