package org.cupwright.app.answers;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.first.Notice;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.desk.plan.PublishPlan;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Loop;
import org.cupwright.green.PlacePolicy;
import org.cupwright.message.Message;
import org.cupwright.policy.EnumNames;
import org.cupwright.rotation.Scheme;

/** A day's plan in words. */
public record PlanText(Texts texts) {
    /** Reasons that the row itself says already. */
    private static final Set<String> IN_THE_ROW = Set.of(
            "rotation.reason.third",
            "rotation.reason.thirdFree",
            "rotation.reason.room",
            "rotation.reason.difficulty",
            "rotation.reason.difficultyUnknown",
            "rotation.reason.yesterdayUnknown",
            "rotation.reason.noLineOfPlay");

    /**
     * What has to be known first; then the plan hole by hole, each with the most telling of its reasons, and what is
     * to be known of it.
     */
    public Lines lines(PlanDay.Answer answer) {
        StoredPlan plan = answer.plan();
        FirstText first = new FirstText(texts, answer.day());
        Lines lines = first.before(answer.first().before(), new Lines(texts)).gap();
        lines.line(title(answer.day(), plan));
        lines.wrapped(
                "",
                new DayText(texts).whence(plan.basis().daySpeed(), plan.basis().dayRain()));
        scheme(plan).ifPresent(scheme -> lines.wrapped("", scheme));
        spread(plan).ifPresent(lines::line);
        lines.gap();
        JudgementText judgements =
                new JudgementText(texts, answer.day().policy().get(PlacePolicy.PACE_METRES));
        BlockText blocks = new BlockText(texts, answer.day().course());
        for (Loop block : blocks.all()) {
            boolean begins = block.equals(blocks.all().get(0));
            blocks.head(block, plan).ifPresent(head -> (begins ? lines : lines.gap()).wrapped("", head));
            for (String hole : block.holes()) {
                List<Notice> notices = answer.first().at(hole);
                Optional<StoredHole> planned = plan.find(hole);
                planned.ifPresent(found -> {
                    judgements.row(Line.left(found.hole(), 5), found.position(), lines);
                    lines.first("     ", telling(found));
                });
                if (planned.isEmpty() && !notices.isEmpty()) {
                    lines.line(hole);
                }
                first.at("     ! ", notices, lines);
            }
        }
        if (!plan.findings().isEmpty()) {
            lines.heading("plan.findings");
        }
        findings(plan.findings()).forEach(finding -> lines.wrapped("  – ", finding));
        answer.changed().ifPresent(hole -> {
            String key = hole.askedBy().isPresent() ? "plan.asked" : "plan.freed";
            lines.heading(key, hole.hole());
            judgements.full(hole.position(), lines);
        });
        return lines;
    }

    /** How a plan stands now. */
    public Lines published(PublishPlan.Answer answer) {
        String key = (answer.changed() ? "publish.now." : "publish.already.")
                + EnumNames.lowerCamel(answer.plan().state());
        return new Lines(texts)
                .say(key, answer.course().name(), texts.day(answer.plan().date()));
    }

    /** Which files its paper was written to. */
    public Lines written(List<Path> files) {
        Lines lines = new Lines(texts);
        files.forEach(file -> lines.say("sheets.written", file));
        return lines;
    }

    private String title(CourseDay day, StoredPlan plan) {
        return texts.say("plan.title", day.course().name(), texts.day(plan.date()))
                + " · "
                + texts.say("state." + EnumNames.lowerCamel(plan.state()));
    }

    /** How the holes are spread over the greens and over what is harder. */
    public Optional<String> spread(StoredPlan plan) {
        return BlockText.spread(plan.totals(), texts);
    }

    /** What could not be done, each said once for all holes of which it is true. */
    public List<String> findings(StoredPlan plan) {
        return findings(plan.findings());
    }

    /** How the holes are spread, where areas of the course's own say it. */
    private Optional<String> scheme(StoredPlan plan) {
        return plan.basis()
                .scheme()
                .filter(Scheme::goesByAreas)
                .map(scheme -> texts.say("scheme." + EnumNames.lowerCamel(scheme)));
    }

    /** Why a hole is where it is, the most telling first; without what its row says already. */
    private List<String> telling(StoredHole hole) {
        return hole.reasons().stream()
                .filter(reason -> !IN_THE_ROW.contains(reason.key()))
                .map(texts::say)
                .toList();
    }

    /** One sentence for all findings that differ only in the hole, which is their first argument. */
    private List<String> findings(List<Message> findings) {
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
