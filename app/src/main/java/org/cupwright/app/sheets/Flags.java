package org.cupwright.app.sheets;

import org.cupwright.app.desk.PaperPolicy;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.Third;
import org.cupwright.policy.EnumNames;
import org.cupwright.policy.Policy;

/** Which flag stands where, by the course's settings; a letter goes with every colour, for those who cannot tell colours apart. */
final class Flags {
    private final Texts texts;
    private final Policy policy;

    Flags(Texts texts, Policy policy) {
        this.texts = texts;
        this.policy = policy;
    }

    String letter(Third third) {
        return texts.say("sheet.flagLetter." + EnumNames.lowerCamel(third));
    }

    String named(Third third) {
        String colour = policy.get(
                switch (third) {
                    case FRONT -> PaperPolicy.FLAG_FRONT;
                    case MIDDLE -> PaperPolicy.FLAG_MIDDLE;
                    case BACK -> PaperPolicy.FLAG_BACK;
                });
        return colour.isBlank() ? letter(third) : letter(third) + " " + colour;
    }
}
