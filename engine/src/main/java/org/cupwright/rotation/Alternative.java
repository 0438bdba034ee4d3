package org.cupwright.rotation;

import java.util.List;
import org.cupwright.message.Message;
import org.cupwright.rotation.candidate.Candidate;

/**
 * The position of another third, side or difficulty that would have done least harm in a hole's place, all other holes
 * staying.
 *
 * @param candidate the position
 * @param whyNot what would have become worse; keys begin with {@code rotation.whyNot.}
 */
public record Alternative(Candidate candidate, List<Message> whyNot) {
    public Alternative {
        whyNot = List.copyOf(whyNot);
    }
}
