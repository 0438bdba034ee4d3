package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.policy.EnumNames;

/** Ground that people drew in words. */
public final class DrawnText {
    private final Texts texts;

    public DrawnText(Texts texts) {
        this.texts = texts;
    }

    /** {@code bad ground, 19.6 m²}. */
    public String what(DrawnItem item) {
        String kind = texts.say("drawn." + EnumNames.lowerCamel(item.word().kind()));
        return item.areaSquareMetres()
                .map(area -> kind + ", " + texts.area(area))
                .orElse(kind);
    }

    /** Why, who and when, as far as they are known. */
    public String who(PersonsOpinion word) {
        List<String> parts = new ArrayList<>();
        word.person().ifPresent(parts::add);
        word.date().ifPresent(date -> parts.add(texts.day(date)));
        word.reason().ifPresent(parts::add);
        return String.join(" · ", parts);
    }
}
