package org.cupwright.app.desk.intake;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.cupwright.app.desk.files.FileFinding;
import org.cupwright.app.desk.files.FileReading;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.storage.LevelSpots;
import org.cupwright.course.Course;
import org.cupwright.formats.items.LevelSpot;
import org.cupwright.formats.items.LevelSpotsCsv;
import org.cupwright.green.GroundPolicy;
import org.cupwright.green.LevelReading;
import org.cupwright.green.PlacePolicy;
import org.cupwright.policy.Policy;

/** Reads slopes noted with a level. */
final class LevelReadingFile {
    private LevelReadingFile() {}

    static LevelSpots read(SourceFile file, Course course, Policy policy, List<FileFinding> findings) {
        org.cupwright.formats.items.LevelSpots read = FileReading.read(
                file,
                in -> LevelSpotsCsv.read(
                        in, course, policy.get(PlacePolicy.ON_CONVENTION), policy.get(PlacePolicy.PACE_METRES)));
        read.findings().forEach(finding -> findings.add(new FileFinding(file.name(), finding)));
        double error = policy.get(GroundPolicy.READING_STANDARD_ERROR_PERCENT) / 100;
        Map<String, List<LevelReading>> byHole = read.spots().stream()
                .collect(Collectors.groupingBy(
                        LevelSpot::holeId,
                        TreeMap::new,
                        Collectors.mapping(spot -> reading(spot, error), Collectors.toList())));
        return new LevelSpots(byHole);
    }

    private static LevelReading reading(LevelSpot spot, double standardError) {
        return new LevelReading(spot.place(), spot.gradientEast(), spot.gradientNorth(), standardError);
    }
}
