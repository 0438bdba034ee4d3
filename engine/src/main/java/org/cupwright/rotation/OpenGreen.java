package org.cupwright.rotation;

import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.cupwright.rotation.candidate.Candidate;
import org.cupwright.rotation.candidate.GreenCandidates;
import org.cupwright.rotation.counting.Option;
import org.cupwright.rotation.counting.Split;

/**
 * A green that is to have a hole, with all it may be and the best of each kind.
 *
 * @param from what was asked
 * @param all every candidate that may be chosen, at least one
 * @param kinds the cheapest candidate of each combination of third, lateral and difficulty: of one kind no other can be
 *     in a best plan
 */
public record OpenGreen(GreenCandidates from, List<Appraised> all, List<Appraised> kinds) {
    private static final Comparator<Appraised> CHEAPEST_FIRST = Comparator.comparingLong(
                    (Appraised one) -> one.option().cost())
            .thenComparing(one -> one.candidate().at().east())
            .thenComparing(one -> one.candidate().at().north());

    static OpenGreen of(GreenCandidates from, Collection<Candidate> choosable, Aims aims, long seed) {
        List<Appraised> all = choosable.stream()
                .map(candidate -> Appraised.of(candidate, from, aims, seed))
                .sorted(CHEAPEST_FIRST)
                .toList();
        Map<Long, Appraised> kinds = new LinkedHashMap<>();
        all.forEach(one -> kinds.putIfAbsent(one.option().tally(), one));
        return new OpenGreen(from, all, List.copyOf(kinds.values()));
    }

    /** The hole's name. */
    public String hole() {
        return from.hole();
    }

    /** Whether somebody fixed its position beforehand. */
    public boolean locked() {
        return from.wishes().locked().isPresent();
    }

    /** What may be chosen: the options of its kinds, in their order. */
    public List<Option> options() {
        return kinds.stream().map(Appraised::option).toList();
    }

    /** The parts of a split that this green has to offer; the empty tally stands for none. */
    Set<Long> offers(Split split) {
        Set<Long> offered = new HashSet<>();
        kinds.forEach(kind -> offered.add(kind.option().tally() & split.mask()));
        return offered;
    }
}
