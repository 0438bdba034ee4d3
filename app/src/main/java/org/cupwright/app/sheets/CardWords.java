package org.cupwright.app.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.settingout.PacedPlace;

/** What a changer has to know of a hole, line by line: the same on the card and on the page that is carried. */
public final class CardWords {
    private final Texts texts;
    private final Flags flags;
    private final PlaceWords words;

    public CardWords(DaySheet day, Texts texts) {
        this.texts = texts;
        this.flags = new Flags(texts, day.policy());
        this.words = new PlaceWords(texts, day.paceMetres());
    }

    /** The part of the green; or that there is no hole today. */
    public String where(SheetHole hole) {
        return words.where(hole);
    }

    /** Paces on and from the side; empty where nothing is cut today, or no line of play leads there. */
    public Optional<String> paces(SheetHole hole) {
        return placed(hole).map(place -> words.paces(place.metres()));
    }

    /** The flag that shows the part of the green. */
    public Optional<String> flag(SheetHole hole) {
        return placed(hole).map(place -> flags.named(place.third()));
    }

    /** How far off is still good, how far it is from the back where that is nearer, and the course's own area. */
    public List<String> beside(SheetHole hole) {
        List<String> beside = new ArrayList<>();
        cutToday(hole).ifPresent(cut -> {
            cut.directions()
                    .leeway()
                    .map(leeway -> words.within(leeway, cut.verdict()))
                    .ifPresent(beside::add);
            cut.directions().place().flatMap(words::fromBack).ifPresent(beside::add);
            hole.area().ifPresent(beside::add);
        });
        return beside;
    }

    /** Where else there is room, if there is hardly any about the hole. */
    public Optional<String> room(SheetHole hole) {
        return cutToday(hole)
                .flatMap(SheetHole.Cut::withRoom)
                .map(place -> texts.say("sheet.roomAt", words.whole(place.metres())));
    }

    /** Where the plug goes, or since when the hole stays. */
    public String plug(SheetHole hole) {
        if (hole.temporary()) {
            return texts.say(
                    "sheet.card.toFill",
                    hole.lastHole().map(words::whole).orElseGet(() -> texts.say("sheet.card.unknown")));
        }
        if (hole.since().isPresent()) {
            return texts.say("sheet.card.stays", texts.day(hole.since().get()));
        }
        return hole.lastHole()
                .map(place -> texts.say("sheet.card.plug", words.whole(place)))
                .or(() -> hole.roughHole().map(part -> texts.say("sheet.card.plugRoughly", words.part(part))))
                .orElseGet(() -> texts.say("sheet.card.plugUnknown"));
    }

    /** What else to mind about the spot: the way where words and paces do not do, and what nobody measured. */
    public List<String> warnings(SheetHole hole) {
        List<String> warnings = new ArrayList<>();
        hole.cut().ifPresent(cut -> {
            wayFromMark(cut).ifPresent(warnings::add);
            if (!cut.slopeChecked()) {
                warnings.add(texts.say("sheet.slopeNotChecked"));
            }
            cut.word()
                    .filter(word -> word.kind().speaksForAHole())
                    .map(this::goodWord)
                    .ifPresent(warnings::add);
        });
        return warnings;
    }

    private static Optional<SheetHole.Cut> cutToday(SheetHole hole) {
        return hole.cut().filter(cut -> !hole.temporary());
    }

    private static Optional<PacedPlace> placed(SheetHole hole) {
        return cutToday(hole).flatMap(cut -> cut.directions().place());
    }

    private String goodWord(PersonsOpinion word) {
        return word.person()
                .map(person -> texts.say("sheet.saidToBeGoodBy", person))
                .orElseGet(() -> texts.say("sheet.saidToBeGood"));
    }

    private Optional<String> wayFromMark(SheetHole.Cut cut) {
        if (cut.onePlace()) {
            return Optional.empty();
        }
        String says = cut.directions().place().isPresent() ? "sheet.card.morePlaces" : "sheet.card.noPaces";
        String way =
                cut.directions().fromMark().map(words::fromMark).orElseGet(() -> texts.say("sheet.card.seeDrawing"));
        return Optional.of(texts.say(says, way));
    }
}
