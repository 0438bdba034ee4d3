package org.cupwright.app.desk.entry;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.log.FactsInEffect;
import org.cupwright.app.storage.FactStore;
import org.cupwright.cupchange.CrewNote.StopSet;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.PayloadKinds;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;
import org.cupwright.turf.signal.CutterSignals;
import org.cupwright.turf.signal.TurfSignal;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;

/** Says at once that a cutter's stop was set otherwise than before, while the cutter is still in hand. */
final class StopRemark {
    private StopRemark() {}

    static Optional<Message> about(Fact fact, FactStore store, Policy policy, ZoneId zone) {
        if (!(fact.payload() instanceof StopSet set)) {
            return Optional.empty();
        }
        List<Fact> stops = new ArrayList<>(new FactsInEffect(store, fact.course())
                .ofKinds(PayloadKinds.names(StopSet.class), FactStore.LONG_AGO, fact.happenedAt()));
        stops.add(fact);
        TurfState state = TurfFold.fold(TurfState.empty(zone), stops);
        LocalDate day = LocalDate.ofInstant(fact.happenedAt(), zone);
        return Optional.ofNullable(state.cutters().get(set.cutter()))
                .flatMap(cutter -> CutterSignals.stopDiffers(cutter, day, policy))
                .map(TurfSignal::says);
    }
}
