package org.cupwright.app.cli.command;

import java.util.List;
import org.cupwright.app.texts.Texts;
import org.cupwright.formats.table.NotReadLine;

/** The lines of a table that do not read, each with its reason. */
public final class NotReadPrint {
    /** So many are shown; JSON has them all. Our choice. */
    private static final int SHOWN = 20;

    private NotReadPrint() {}

    public static void print(Task task, List<NotReadLine> lines) {
        Texts texts = task.texts();
        if (!lines.isEmpty()) {
            task.print(texts.say("history.notRead", lines.size()));
        }
        for (NotReadLine line : lines.subList(0, Math.min(SHOWN, lines.size()))) {
            String said = texts.say("history.line", line.number(), texts.say(line.why()), texts.say(line.tryThis()));
            Layout.wrapped("  ", said).forEach(task::print);
        }
        if (lines.size() > SHOWN) {
            task.print("  " + texts.say("history.more", lines.size() - SHOWN));
        }
    }
}
