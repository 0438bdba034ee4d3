package org.cupwright.app.office.weeks;

import org.cupwright.app.texts.Texts;

/** What is to be changed, in words. */
record WishText(Texts texts) {
    String says(Wish wish) {
        String key = "weeks.wish." + wish.kind().key();
        String day = texts.weekday(wish.on());
        return switch (wish.kind()) {
            case SWAP ->
                texts.say(key, wish.hole(), day, texts.weekday(wish.other().orElseThrow()));
            case AWAY ->
                texts.say(key, wish.hole(), day, texts.length(wish.metres().orElseThrow()));
            case HERE, FREE, SPOILED -> texts.say(key, wish.hole(), day);
        };
    }
}
