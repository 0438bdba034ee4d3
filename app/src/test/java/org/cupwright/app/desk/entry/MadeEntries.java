package org.cupwright.app.desk.entry;

import static org.cupwright.app.desk.entry.EntryDesk.says;

import java.util.List;
import java.util.Optional;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.CrewNote.NoteToNext;
import org.cupwright.cupchange.CupWork.CupChanged;
import org.cupwright.cupchange.CupWork.LeftInOldHole;
import org.cupwright.cupchange.Payload;

/** Entries as somebody might make them on the invented morning of {@link EntryDesk}. */
final class MadeEntries {
    static final Payload NOTE = new NoteToNext("an invented note");
    static final Payload CUT = CupChanged.asPlanned(new MapPoint(5, 6));
    static final Payload LEFT = new LeftInOldHole(Optional.empty());
    static final Says AS_PLANNED = occasion ->
            new Says.Said(CupChanged.asPlanned(occasion.planned().orElseThrow()), Optional.empty(), List.of());

    private MadeEntries() {}

    static Entry entry(Says says, String... holes) {
        return new Entry(List.of(holes), false, Optional.empty(), says, Optional.empty(), false);
    }

    static Entry asPlanned(String... holes) {
        return new Entry(List.of(holes), true, Optional.empty(), AS_PLANNED, Optional.empty(), false);
    }

    /** Made by somebody who has been asked already. */
    static Entry sure(Payload payload, String... holes) {
        return new Entry(List.of(holes), false, Optional.empty(), says(payload), Optional.empty(), true);
    }

    static List<String> holes(RecordFact.Answer answer) {
        return answer.kept().stream().map(fact -> fact.hole().orElse("")).toList();
    }
}
