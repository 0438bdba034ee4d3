package org.cupwright.app.answers.json;

import java.time.LocalDate;
import java.util.List;
import org.cupwright.app.desk.policy.PolicyEntry;
import org.cupwright.app.storage.upkeep.BackupDone;
import org.cupwright.app.storage.upkeep.FolderCounts;
import org.cupwright.app.storage.upkeep.FolderReport;
import org.cupwright.app.storage.upkeep.FolderReport.Damage;
import org.cupwright.app.storage.upkeep.RestoreDone;
import org.cupwright.app.texts.Texts;
import org.cupwright.message.Message;
import org.cupwright.policy.Setting;
import tools.jackson.databind.JsonNode;

/** What came of backup, restore and check, and the settings, as scripts read them. */
public final class UpkeepJson {
    private final Shapes shapes;

    public UpkeepJson(Texts texts) {
        this.shapes = new Shapes(texts)
                .as(FolderCounts.class, UpkeepJson::counts)
                .as(
                        Damage.class,
                        damage -> new Shape()
                                .with("error", damage.what())
                                .with("where", damage.where())
                                .with("tryThis", damage.tryThis()))
                .as(PolicyEntry.class, UpkeepJson::setting);
    }

    public JsonNode backup(BackupDone done) {
        Shape told = new Shape()
                .with("file", done.file())
                .with("bytes", done.bytes())
                .with("holds", done.holds());
        return shapes.tree(done.damages().isEmpty() ? told : told.with("damages", done.damages()));
    }

    public JsonNode restore(RestoreDone done) {
        return shapes.tree(new Shape()
                .with("file", done.source())
                .with("before", done.before())
                .with("holds", done.holds()));
    }

    public JsonNode check(FolderReport report) {
        return shapes.tree(new Shape()
                .with("file", report.file())
                .with("exists", report.exists())
                .with("sound", report.sound())
                .with("format", report.format())
                .with("journal", report.journal())
                .with("synchronous", report.synchronous())
                .with("holds", report.holds())
                .with("damages", report.damages()));
    }

    private static Shape counts(FolderCounts counts) {
        return new Shape()
                .with("courses", counts.courses())
                .with("surveyedGreens", counts.surveys())
                .with("plans", counts.plans())
                .with("facts", counts.facts())
                .with("photos", counts.photos())
                .with("photosMissing", counts.photosMissing());
    }

    public JsonNode settings(LocalDate day, List<PolicyEntry> entries) {
        return shapes.tree(new Shape().with("date", day).with("settings", entries));
    }

    private static Shape setting(PolicyEntry entry) {
        Setting<?> setting = entry.setting();
        return new Shape()
                .with("key", setting.key())
                .with("value", entry.value())
                .with("unit", setting.unit())
                .with("range", setting.type().accepts())
                .with("default", entry.defaultText())
                .with("isDefault", entry.isDefault())
                .with("mark", setting.sourceKind())
                .with("source", setting.source())
                .with("says", Message.of(setting.sentenceKey()));
    }
}
