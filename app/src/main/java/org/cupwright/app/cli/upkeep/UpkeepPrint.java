package org.cupwright.app.cli.upkeep;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.cli.command.Layout;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.storage.upkeep.BackupDone;
import org.cupwright.app.storage.upkeep.FolderCounts;
import org.cupwright.app.storage.upkeep.FolderReport;
import org.cupwright.app.storage.upkeep.FolderReport.Damage;
import org.cupwright.app.storage.upkeep.RestoreDone;
import org.cupwright.app.texts.Texts;
import tools.jackson.databind.node.ObjectNode;

/** What came of backup, restore and check, as lines and as JSON. */
final class UpkeepPrint {
    private static final double KILOBYTE = 1000;

    private final Task task;
    private final Texts texts;

    UpkeepPrint(Task task) {
        this.task = task;
        this.texts = task.texts();
    }

    void backup(BackupDone done) {
        if (task.options().json()) {
            ObjectNode node = Json.object();
            node.put("file", done.file().toString());
            node.put("bytes", done.bytes());
            node.set("holds", json(done.holds()));
            task.print(Json.document(node));
            return;
        }
        task.print(texts.say("backup.done", done.file().toString(), size(done.bytes())));
        task.print(holds(done.holds()));
    }

    void restore(RestoreDone done) {
        if (task.options().json()) {
            ObjectNode node = Json.object();
            node.put("file", done.source().toString());
            node.set("before", Json.text(done.before().map(Path::toString)));
            node.set("holds", json(done.holds()));
            task.print(Json.document(node));
            return;
        }
        task.print(texts.say("restore.done", done.source().toString()));
        task.print(holds(done.holds()));
        done.before().ifPresent(before -> task.print(texts.say("restore.before", before.toString())));
    }

    void check(FolderReport report) {
        if (task.options().json()) {
            task.print(Json.document(json(report)));
            return;
        }
        if (!report.exists()) {
            task.print(texts.say("check.nothing", report.file().toString()));
            return;
        }
        task.print(texts.say("check.title", report.file().toString(), Integer.toString(report.format())));
        task.print(holds(report.holds()));
        if (!report.journal().isEmpty()) {
            task.print(texts.say("check.journal", report.journal(), report.synchronous()));
        }
        task.print(
                report.sound()
                        ? texts.say("check.sound")
                        : texts.say("check.damaged", report.damages().size()));
        report.damages().forEach(this::damage);
    }

    private void damage(Damage damage) {
        Layout.wrapped("  ", texts.say(damage.what())).forEach(task::print);
        line("where", texts.say(damage.where()));
        line("try", texts.say(damage.tryThis()));
    }

    private void line(String name, String text) {
        String label = Layout.left(texts.say("label." + name), 7);
        task.print("    " + label + text);
    }

    private ObjectNode json(FolderReport report) {
        ObjectNode node = Json.object();
        node.put("file", report.file().toString());
        node.put("exists", report.exists());
        node.put("sound", report.sound());
        node.put("format", report.format());
        node.put("journal", report.journal());
        node.put("synchronous", report.synchronous());
        node.set("holds", json(report.holds()));
        node.set("damages", Json.array(report.damages().stream().map(this::json).toList()));
        return node;
    }

    private ObjectNode json(Damage damage) {
        ObjectNode node = Json.object();
        node.put("error", texts.say(damage.what()));
        node.put("where", texts.say(damage.where()));
        node.put("tryThis", texts.say(damage.tryThis()));
        return node;
    }

    private static ObjectNode json(FolderCounts counts) {
        ObjectNode node = Json.object();
        node.put("courses", counts.courses());
        node.put("surveyedGreens", counts.surveys());
        node.put("plans", counts.plans());
        node.put("facts", counts.facts());
        node.put("photos", counts.photos());
        node.put("photosMissing", counts.photosMissing());
        return node;
    }

    private String holds(FolderCounts counts) {
        List<String> said = new ArrayList<>();
        said.add(texts.say("upkeep.holds", counts.courses(), counts.surveys(), counts.plans(), counts.facts()));
        if (counts.photos() > 0) {
            said.add(texts.say("upkeep.photos", counts.photos()));
        }
        if (counts.photosMissing() > 0) {
            said.add(texts.say("upkeep.photosMissing", counts.photosMissing()));
        }
        return String.join("\n", said);
    }

    private String size(long bytes) {
        double kilobytes = bytes / KILOBYTE;
        return kilobytes < KILOBYTE
                ? texts.number(Math.max(1, kilobytes), 0) + " kB"
                : texts.number(kilobytes / KILOBYTE, 1) + " MB";
    }
}
