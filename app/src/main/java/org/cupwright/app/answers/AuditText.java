package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.people.ListAudit.Trail;
import org.cupwright.app.storage.AuditLine;
import org.cupwright.app.texts.Texts;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Moment;
import org.cupwright.message.Message.Name;
import org.cupwright.policy.EnumNames;

/** The audit trail, in words: a line each. */
public record AuditText(Texts texts, Lines lines) {
    public AuditText(Texts texts) {
        this(texts, new Lines(texts));
    }

    public Lines list(Trail trail) {
        if (trail.lines().isEmpty()) {
            lines.say("audit.nothing");
        }
        trail.lines().forEach(line -> lines.indented("", said(trail, line)));
        return lines;
    }

    /** Each line of the trail as a sentence, in the order in which they were written. */
    public List<String> said(Trail trail) {
        return trail.lines().stream().map(line -> said(trail, line)).toList();
    }

    /** When, who, and what was done. */
    private String said(Trail trail, AuditLine line) {
        Name by = new Name(
                line.by().name().isEmpty()
                        ? texts.say("audit.nobody")
                        : line.by().name());
        List<Message.Argument> about = new ArrayList<>(
                List.of(new Moment(line.at(), trail.zone()), by, line.about().thing()));
        about.add(line.before().orElse(new Name(texts.say("audit.none"))));
        about.add(line.after().orElse(new Name(texts.say("audit.none"))));
        return texts.say(new Message("audit." + EnumNames.lowerCamel(line.what()), about));
    }
}
