package org.cupwright.app.cli.plan;

import java.util.Optional;
import org.cupwright.app.cli.command.Arguments;
import org.cupwright.app.cli.command.SpotOptions;
import org.cupwright.app.desk.plan.HoleWish;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What a person wants of one hole, as options. */
final class WishOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(
            names = "--hole",
            paramLabel = "H",
            description =
                    "One hole that somebody wants elsewhere: with --on and --side, --forbid or --free. The others "
                            + "stay as they are in the draft.")
    private String hole;

    @Mixin
    private SpotOptions spot;

    @Option(names = "--free", description = "What was asked for the hole that day no longer counts.")
    private boolean free;

    @Option(names = "--forbid", description = "The hole is not to be at that spot, nor within --radius of it.")
    private boolean forbid;

    @Option(names = "--radius", paramLabel = "M", description = "With --forbid: how far about the spot, in metres.")
    private Double radiusMetres;

    /** The wish; empty when the whole day is to be planned. */
    Optional<HoleWish> find() {
        boolean about = spot.find().isPresent() || free || forbid || radiusMetres != null;
        if (hole == null) {
            if (about) {
                throw wrong("Say for which hole: --hole 7.");
            }
            return Optional.empty();
        }
        if (free) {
            if (forbid || radiusMetres != null || spot.find().isPresent()) {
                throw wrong("--free stands alone with --hole.");
            }
            return Optional.of(new HoleWish.Free(hole));
        }
        if (forbid != (radiusMetres != null)) {
            throw wrong("--forbid and --radius go together, as --forbid --on 12 --side L5 --radius 3.");
        }
        if (forbid && !(radiusMetres > 0 && radiusMetres <= 30)) {
            throw wrong("--radius takes metres above 0 and at most 30, not " + radiusMetres + ".");
        }
        return Optional.of(
                forbid ? new HoleWish.NotHere(hole, spot.get(), radiusMetres) : new HoleWish.Here(hole, spot.get()));
    }

    private RuntimeException wrong(String says) {
        return new Arguments(spec).wrong(says, "");
    }
}
