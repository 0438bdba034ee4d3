package org.cupwright.app.desk.turf;

import java.io.IOException;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.cupwright.app.desk.history.FoldedFacts;
import org.cupwright.app.desk.history.StateIn;
import org.cupwright.app.desk.history.StateOut;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.cupchange.Fact;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;

/**
 * The turf as the logbook has left it; that stretches may be folded one onto the other is the fold's own property
 * ({@link TurfFold}).
 */
final class FoldedTurf implements FoldedFacts<TurfState> {
    private final ZoneId zone;

    FoldedTurf(ZoneId zone) {
        this.zone = zone;
    }

    @Override
    public String name() {
        return "turf 5";
    }

    @Override
    public TurfState nothing() {
        return TurfState.empty(zone);
    }

    @Override
    public List<Fact> between(FactsInEffect facts, Instant from, Instant before) {
        return facts.between(from, before);
    }

    @Override
    public TurfState with(TurfState before, List<Fact> next) {
        return TurfFold.fold(before, next);
    }

    @Override
    public void write(StateOut out, TurfState state) throws IOException {
        TurfStateBytes.write(out, state);
    }

    @Override
    public TurfState read(StateIn in) throws IOException {
        return TurfStateBytes.read(in);
    }
}
