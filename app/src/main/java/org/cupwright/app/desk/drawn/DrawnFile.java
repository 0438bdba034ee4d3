package org.cupwright.app.desk.drawn;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.cupwright.app.desk.files.FileFinding;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.FirstSign;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.course.Course;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.Where;
import org.cupwright.formats.items.DrawnCsv;
import org.cupwright.formats.items.DrawnGeoJson;
import org.cupwright.formats.items.ReadDrawn;
import org.cupwright.green.PlacePolicy;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;
import org.cupwright.policy.Policy;

/** A file of ground that people drew or listed: GeoJSON or CSV, whichever it is. */
public final class DrawnFile {
    private final SourceFile file;
    private final ReadDrawn read;

    private DrawnFile(SourceFile file, ReadDrawn read) {
        this.file = file;
        this.read = read;
    }

    public static DrawnFile read(SourceFile file, Course course, Policy policy) {
        double pace = policy.get(PlacePolicy.PACE_METRES);
        ReadDrawn read = FileReading.read(
                file,
                in -> FirstSign.isOneOf("{[", in)
                        ? DrawnGeoJson.read(in, course, pace)
                        : DrawnCsv.read(in, course, policy.get(PlacePolicy.ON_CONVENTION), pace));
        return new DrawnFile(file, new ReadDrawn(read.items(), withRepeatedIds(read)));
    }

    /** One id twice in a file: the first would be lost without a word. */
    private static List<Finding> withRepeatedIds(ReadDrawn read) {
        List<Finding> findings = new ArrayList<>(read.findings());
        Set<String> seen = new HashSet<>();
        for (ReadDrawn.Item item : read.items()) {
            if (item.id().isPresent() && !seen.add(item.id().get())) {
                findings.add(Finding.of(
                        FindingKind.DRAWN_ID_TWICE,
                        Where.hole(item.holes().get(0)),
                        new Message.Name(item.id().get())));
            }
        }
        return findings;
    }

    /** What does not read. */
    public List<FileFinding> findings() {
        return read.findings().stream()
                .map(finding -> new FileFinding(file.name(), finding))
                .toList();
    }

    /**
     * All of it.
     *
     * @throws Problem when part of it does not read: bad ground that is passed over would be cut into
     */
    public List<ReadDrawn.Item> items() {
        if (!read.findings().isEmpty()) {
            throw refused();
        }
        return read.items();
    }

    private Problem refused() {
        Problem first = FileReading.problem(read.findings().get(0), file.name());
        int others = read.findings().size() - 1;
        if (others == 0) {
            return first;
        }
        List<Message> where = new ArrayList<>(first.where());
        where.add(Message.of("where.andOthers", new Message.Count(others)));
        return new Problem(first.what(), where, first.value(), first.tryThis());
    }

    /** What of it reads, whether all does or not: for looking only. */
    public List<ReadDrawn.Item> readable() {
        return read.items();
    }
}
