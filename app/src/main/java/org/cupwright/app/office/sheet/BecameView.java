package org.cupwright.app.office.sheet;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.desk.log.HolesCut;
import org.cupwright.app.desk.log.HolesCut.Became;
import org.cupwright.app.desk.plan.CutSoFar;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.sheets.DaySheet;
import org.cupwright.app.sheets.SheetHole;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.EnumNames;

/** What became of the plan, for strangers: when, and never by whom. */
record BecameView(Texts texts, DayPaper paper, HolesCut cut) {
    /** Of a planned hole; empty as long as nothing was done there. */
    Optional<Became> find(String hole) {
        return paper.plan()
                .find(hole)
                .flatMap(planned -> cut.find(hole)
                        .map(was -> was.became(
                                Optional.of(planned.position().judgement().position()))));
    }

    /** Over the page: that all is planned, or cut by when, or how many of how many are. */
    String state(DaySheet sheet) {
        CutSoFar soFar = paper.soFar();
        return soFar.all() || soFar.holes().isEmpty()
                ? sheet.state(texts)
                : texts.say(
                        "publicSheet.partly",
                        soFar.holes().size(),
                        paper.plan().holes().stream()
                                .filter(hole ->
                                        !hole.stays() || cut.find(hole.hole()).isPresent())
                                .count(),
                        soFar.last().orElseThrow().toString());
    }

    /** That paper of this morning is wrong where a hole is elsewhere than planned. */
    Optional<String> otherwise() {
        List<String> holes = paper.plan().holes().stream()
                .map(StoredHole::hole)
                .filter(hole -> find(hole).filter(was -> was != Became.CUT).isPresent())
                .toList();
        return holes.isEmpty()
                ? Optional.empty()
                : Optional.of(texts.say("publicSheet.otherwise", holes.size(), String.join(", ", holes)));
    }

    /** Beside a hole; nothing where the same stands over the page. */
    String says(SheetHole hole) {
        Optional<Became> was = find(hole.hole());
        boolean apart = !paper.soFar().holes().isEmpty() && !paper.soFar().all();
        if (was.isPresent() && (apart || was.get() != Became.CUT)) {
            String time = cut.find(hole.hole()).orElseThrow().time().toString();
            return texts.say("publicSheet.became." + EnumNames.lowerCamel(was.get()), time);
        }
        if (hole.stays() && was.isEmpty()) {
            return texts.say("publicSheet.stays", texts.day(hole.since().orElseThrow()));
        }
        return apart && was.isEmpty() && paper.plan().find(hole.hole()).isPresent()
                ? texts.say("publicSheet.planned")
                : "";
    }
}
