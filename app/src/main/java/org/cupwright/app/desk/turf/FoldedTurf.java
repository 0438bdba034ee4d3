package org.cupwright.app.desk.turf;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.history.FoldedFacts;
import org.cupwright.app.desk.history.RecordBytes;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.cupchange.Fact;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;

/**
 * The turf as the logbook has left it; that stretches may be folded one onto the other is the fold's own property
 * ({@link TurfFold}).
 */
record FoldedTurf(ZoneId zone) implements FoldedFacts<TurfState> {
    static final RecordBytes<TurfState> BYTES = new RecordBytes<>(TurfState.class);

    @Override
    public String name() {
        return "turf 6";
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
    public byte[] write(TurfState state) {
        return BYTES.write(state);
    }

    @Override
    public Optional<TurfState> read(byte[] bytes) {
        return BYTES.read(bytes);
    }
}
