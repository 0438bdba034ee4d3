package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.drawn.KeepDrawn;
import org.cupwright.app.storage.DrawnOnCourse.Kept;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.policy.EnumNames;

/** Ground that people drew in words. */
public final class DrawnText {
    private static final int ID_WIDTH = 14;
    private static final int KIND_WIDTH = 22;

    private final Texts texts;
    private final PlaceText places;
    private final Lines lines;

    public DrawnText(Texts texts, CourseDay day) {
        this.texts = texts;
        this.places = new PlaceText(texts, day.course(), day.policy());
        this.lines = new Lines(texts);
    }

    /** What is kept now, and whose word gave way to it. */
    public Lines kept(KeepDrawn.Answer answer) {
        said("drawn.kept", answer.kept());
        answer.before()
                .ifPresent(before -> lines.line("  "
                        + texts.say("drawn.replaced", who(before.item().word()).strip())));
        return lines;
    }

    public Lines takenBack(KeepDrawn.Answer answer) {
        return said("drawn.takenBack", answer.kept());
    }

    private Lines said(String key, Kept kept) {
        return lines.say(key, kept.item().id(), what(kept.item()), where(kept));
    }

    public Lines list(KeepDrawn.Listed listed) {
        if (listed.kept().isEmpty()) {
            lines.say("drawn.none");
        }
        listed.kept().forEach(this::row);
        return lines;
    }

    private void row(Kept kept) {
        DrawnItem item = kept.item();
        lines.row(List.of(Line.left(item.id(), ID_WIDTH), Line.left(what(item), KIND_WIDTH)), where(kept));
        String who = who(item.word());
        if (!who.isBlank()) {
            lines.wrapped(List.of(Line.left("", ID_WIDTH)), who.strip());
        }
    }

    private String where(Kept kept) {
        return places.at(kept.holes().get(0), kept.item().middle());
    }

    /** {@code bad ground, 19.6 m²}. */
    private String what(DrawnItem item) {
        String kind = texts.say("drawn." + EnumNames.lowerCamel(item.word().kind()))
                + item.word().area().map(number -> " " + number).orElse("");
        return item.areaSquareMetres()
                .map(area -> kind + ", " + texts.area(area))
                .orElse(kind);
    }

    /** Why, who and when, as far as they are known. */
    private String who(PersonsOpinion word) {
        List<String> parts = new ArrayList<>();
        word.person().ifPresent(parts::add);
        word.date().ifPresent(date -> parts.add(texts.day(date)));
        word.reason().ifPresent(parts::add);
        return String.join(" · ", parts);
    }
}
