package org.cupwright.app.answers;

import org.cupwright.app.texts.Texts;
import org.cupwright.green.MeasuredSharing;
import org.cupwright.green.agreement.RoundBought;
import org.cupwright.policy.EnumNames;

/** What the points of a survey share of their errors, in words. */
final class SharingText {
    private final Texts texts;

    SharingText(Texts texts) {
        this.texts = texts;
    }

    /** How far points are off together, and how that is known. */
    String shared(MeasuredSharing sharing) {
        String set = millimetres(sharing.set().sigmaMetres());
        return sharing.isMeasured()
                ? texts.say(
                        "sharing.measured",
                        millimetres(sharing.sigmaMetres()),
                        millimetres(2 * sharing.sigmaErrorMetres()),
                        set,
                        texts.say("sharing.by." + EnumNames.lowerCamel(sharing.by())))
                : texts.say("sharing.set", set);
    }

    /** What the readings of a green have bought. */
    Lines bought(RoundBought bought, Lines lines) {
        lines.wrapped(
                "  ",
                texts.say(
                        "level.bought",
                        bought.readings(),
                        texts.number(bought.withoutPoints(), 2),
                        texts.number(bought.withPoints(), 2)));
        if (bought.sharing().isMeasured()) {
            lines.wrapped("  ", shared(bought.sharing()));
        }
        if (bought.sharing().trended()) {
            lines.wrapped("  ", texts.say("level.trended"));
        }
        return lines;
    }

    private String millimetres(double metres) {
        return texts.number(1000 * metres, 1);
    }
}
