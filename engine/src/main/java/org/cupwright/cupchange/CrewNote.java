package org.cupwright.cupchange;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.message.Message.Name;

/** Tools, learning, and what people tell each other. */
public sealed interface CrewNote extends Payload {
    @Override
    default boolean needsHole() {
        return false;
    }

    /** How much something odd matters. */
    enum Severity {
        NOTE,
        SOON,
        /** Ring the person in charge. */
        NOW
    }

    /** The tick list was gone through; what was missing or broken is named. */
    record ToolsChecked(List<String> missing) implements CrewNote {
        public ToolsChecked {
            missing = List.copyOf(missing);
        }
    }

    /** The depth at which a cutter's stop was set, from the shell's lower edge. */
    record StopSet(String cutter, double depthMillimetres) implements CrewNote {
        public StopSet {
            Checks.word("cutter", cutter);
            Checks.between("stopDepth", depthMillimetres, 0, 1000, "mm");
        }
    }

    /** A cutter's blade was sharpened. */
    record ToolSharpened(String cutter) implements CrewNote {
        public ToolSharpened {
            Checks.word("cutter", cutter);
        }
    }

    /** A learner may now do a piece of the work alone; the fact's person is the trainer. */
    record LearnerSignedOff(String learner, String work) implements CrewNote {
        public LearnerSignedOff {
            Checks.word("learner", learner);
            Checks.word("work", work);
        }
    }

    /**
     * Something that should not be so.
     *
     * @param photo the SHA-256 of its photo's content, 64 hexadecimal digits in lower case, if one was taken
     */
    record SomethingOdd(Severity severity, String text, Optional<String> photo) implements CrewNote {
        public SomethingOdd {
            Checks.word("text", text);
            if (photo.filter(hash -> !hash.matches("[0-9a-f]{64}")).isPresent()) {
                throw new ImpossibleFact("photo", new Name(photo.get()));
            }
        }
    }

    /** Somebody has read of something odd, and it is being seen to. */
    record OddSeen(UUID entry) implements CrewNote {}

    /** A word to whoever comes next. */
    record NoteToNext(String text) implements CrewNote {
        public NoteToNext {
            Checks.word("text", text);
        }
    }
}
