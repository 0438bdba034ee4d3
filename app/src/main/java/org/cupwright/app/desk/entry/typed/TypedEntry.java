package org.cupwright.app.desk.entry.typed;

import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.entry.Says;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.desk.log.LogProblems;
import org.cupwright.app.desk.log.PhotoReading;
import org.cupwright.app.desk.plan.PlanChoice;
import org.cupwright.app.storage.Photo;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/**
 * What a person typed about an entry, turned into what it says.
 *
 * @param form what can be said; empty for a correction, which says what its entry can
 * @param parts parts by name; names and values may be shortened
 * @param where the place on the green
 * @param radiusMetres how far about the place the ground is meant
 * @param when the time; empty where nobody says
 * @param asPlanned cut where the day's plan had it
 * @param photo a photo that goes with it, by its hash
 */
public record TypedEntry(
        Optional<EntryForm> form,
        Map<String, String> parts,
        Optional<Spot> where,
        OptionalDouble radiusMetres,
        Optional<String> when,
        boolean asPlanned,
        Optional<String> photo)
        implements Says {
    private static final String CUT_AT = "cutAt";
    private static final String PLANNED = "planned";

    /** What an entry should have said; empty where nothing is typed. */
    public static Optional<Says> change(Map<String, String> parts, Optional<Spot> where, OptionalDouble radiusMetres) {
        return parts.isEmpty() && where.isEmpty()
                ? Optional.empty()
                : Optional.of(new TypedEntry(
                        Optional.empty(), parts, where, radiusMetres, Optional.empty(), false, Optional.empty()));
    }

    /** A photo for an entry of a kind that takes one. */
    public static Photo photo(EntryForm form, SourceFile file) {
        if (form.find(Photo.PART).isEmpty()) {
            throw Problem.of("log.takesNoPhoto", "photo", "", new Name(LogProblems.typed(form.kind())));
        }
        return PhotoReading.read(file);
    }

    @Override
    public Said on(Occasion occasion) {
        Draft draft = occasion.was().map(Draft::of).orElseGet(() -> new Draft(form.orElseThrow()));
        EntryPlace places = new EntryPlace(occasion.hole(), occasion.policy());
        MomentText moments =
                new MomentText(occasion.day(), occasion.course().frame().zone());
        photo.ifPresent(hash -> draft.set(Photo.PART, hash));
        parts.forEach((name, text) -> {
            Part part = draft.form().part(name);
            draft.set(part.name(), PartText.typed(part, text).on(places, moments));
        });
        where.ifPresent(spot -> places.into(draft, spot, radiusMetres));
        if (occasion.was().isEmpty()) {
            takePlan(draft, occasion);
            draft.fillIn(occasion.day());
        }
        Optional<Instant> happened = when.map(moments::read);
        return new Said(draft.finished(), happened, moments.remarks());
    }

    /** Where the plan had the hole is kept beside where it was cut. */
    private void takePlan(Draft draft, Occasion occasion) {
        Name kind = new Name(LogProblems.typed(draft.form().kind()));
        boolean isCut = draft.form().find(CUT_AT).isPresent();
        if (asPlanned && !isCut) {
            throw Problem.of("log.noPlace", "asPlanned", "", kind);
        }
        if (asPlanned) {
            Hole hole = occasion.hole().orElseThrow(() -> Problem.of("log.needsHole", "hole", "", kind));
            MapPoint planned = occasion.planned().orElseThrow(() -> PlanChoice.leftOut(hole.id(), occasion.day()));
            draft.set(CUT_AT, planned);
        }
        if (isCut && !draft.says(PLANNED)) {
            occasion.planned().ifPresent(point -> draft.set(PLANNED, point));
        }
    }
}
