package org.cupwright.app.store;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Only what is known to be a person's name is replaced: holes, settings and areas may be called alike. */
class NamesInDocumentTest {
    private final NamesInDocument names = new NamesInDocument("ash", "erased-1");

    private void becomes(String before, String after) {
        assertThat(names.replacedIn(before)).contains(after);
    }

    @Test
    void peopleInProperties() {
        becomes(
                "{\"person\":\"ASH\",\"holes\":[{\"hole\":\"Ash\",\"askedBy\":\"Ash\",\"feet\":10.10}]}",
                "{\"person\":\"erased-1\",\"holes\":[{\"hole\":\"Ash\",\"askedBy\":\"erased-1\",\"feet\":10.1}]}");
    }

    @Test
    void peopleInSentences() {
        String against = "{\"key\":\"plan.finding.askedAgainst\",\"arguments\":[{\"is\":\"name\",\"text\":\"Ash\"},";
        becomes(
                against + "{\"is\":\"name\",\"text\":\"Ash\"}]}",
                against + "{\"is\":\"name\",\"text\":\"erased-1\"}]}");
        String drawn = "{\"key\":\"rule.drawnGround.usual\",\"arguments\":[{\"is\":\"count\",\"number\":1},";
        becomes(drawn + "{\"is\":\"name\",\"text\":\"Ash\"}]}", drawn + "{\"is\":\"name\",\"text\":\"erased-1\"}]}");
    }

    @Test
    void peopleInTheAudit() {
        becomes(
                "{\"by\":{\"id\":null,\"name\":\"Ash\"},\"about\":{\"thing\":{\"is\":\"name\",\"text\":\"Ash\"},"
                        + "\"person\":\"7\"}}",
                "{\"by\":{\"id\":null,\"name\":\"erased-1\"},\"about\":{\"thing\":{\"is\":\"name\","
                        + "\"text\":\"erased-1\"},\"person\":\"7\"}}");
    }

    /** Whoever is invited has no account yet. */
    @Test
    void theInvited() {
        String invited = "{\"what\":\"PERSON_INVITED\",\"about\":{\"thing\":{\"is\":\"name\",\"text\":";
        becomes(invited + "\"Ash\"},\"person\":null}}", invited + "\"erased-1\"},\"person\":null}}");
    }

    @Test
    void whatIsNoPersonStays() {
        assertThat(names.replacedIn("{\"hole\":\"Ash\",\"name\":\"Ash\",\"text\":\"Ash\",\"person\":\"Ash B\"}"))
                .isEmpty();
        assertThat(names.replacedIn("{\"key\":\"other\",\"arguments\":[{\"is\":\"name\",\"text\":\"Ash\"}]}"))
                .isEmpty();
        assertThat(names.replacedIn("{\"about\":{\"thing\":{\"is\":\"name\",\"text\":\"Ash\"},\"person\":null}}"))
                .isEmpty();
    }
}
