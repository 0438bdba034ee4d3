package org.cupwright.app.office.work;

import java.util.Optional;
import org.cupwright.app.desk.Progress.Step;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Told;

/** A piece of work in the words of its page. */
public record WorkView(Texts texts) {
    /**
     * The page.
     *
     * @param title what is being done
     * @param address where it is looked at
     * @param says how far it has come, in words
     * @param done how many parts of the stage are finished
     * @param all how many there are; 0 as long as nothing is known
     * @param goesOn whether it is not ended
     * @param stopping whether it was to stop
     * @param told what went wrong, where something did
     * @param back where it was begun
     */
    public record Page(
            String title,
            String address,
            String says,
            int done,
            int all,
            boolean goesOn,
            boolean stopping,
            Optional<Told> told,
            String back) {}

    Page of(Piece piece, int before) {
        Optional<Step> step = piece.step().filter(now -> !now.stage().isEmpty());
        return new Page(
                piece.title(),
                address(piece),
                says(piece, step, before),
                step.map(Step::done).orElse(0),
                step.map(Step::all).orElse(0),
                piece.outcome().isEmpty(),
                piece.stopping(),
                told(piece),
                piece.back());
    }

    static String address(Piece piece) {
        return "/work/" + piece.id();
    }

    private String says(Piece piece, Optional<Step> step, int before) {
        if (piece.stopping()) {
            return texts.say("work.stopping");
        }
        return step.map(now -> texts.say("progress." + now.stage(), now.done(), now.all()))
                .orElseGet(() -> before > 0 ? texts.say("work.waits", before) : texts.say("work.begins"));
    }

    private Optional<Told> told(Piece piece) {
        return piece.outcome()
                .flatMap(became -> became.problem()
                        .map(problem -> Told.of(problem, texts))
                        .or(() -> became.reference().map(reference -> Told.defect(reference, texts))));
    }
}
