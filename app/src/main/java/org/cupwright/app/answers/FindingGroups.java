package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cupwright.app.texts.Texts;
import org.cupwright.message.Message;

/** Findings of a plan said once for all the holes they are about. */
public final class FindingGroups {
    private final Texts texts;

    public FindingGroups(Texts texts) {
        this.texts = texts;
    }

    /** One sentence for all findings that differ only in the hole, which is their first argument. */
    public List<String> said(List<Message> findings) {
        Map<Message, List<String>> holes = new LinkedHashMap<>();
        for (Message finding : findings) {
            boolean ofHole =
                    !finding.arguments().isEmpty() && finding.arguments().get(0) instanceof Message.Name;
            Message same = ofHole ? without(finding) : finding;
            List<String> names = holes.computeIfAbsent(same, key -> new ArrayList<>());
            if (ofHole) {
                names.add(texts.show(finding.arguments().get(0)));
            }
        }
        List<String> said = new ArrayList<>();
        holes.forEach((finding, names) -> said.add(texts.say(names.isEmpty() ? finding : with(finding, names))));
        return said;
    }

    private static Message without(Message finding) {
        return new Message(
                finding.key(),
                finding.arguments().subList(1, finding.arguments().size()));
    }

    private static Message with(Message finding, List<String> names) {
        List<Message.Argument> arguments = new ArrayList<>();
        arguments.add(new Message.Name(String.join(", ", names)));
        arguments.addAll(finding.arguments());
        return new Message(finding.key(), arguments);
    }
}
