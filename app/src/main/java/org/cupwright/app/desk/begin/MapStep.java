package org.cupwright.app.desk.begin;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.desk.intake.MapFile;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.app.storage.SettingUp.Place;
import org.cupwright.app.storage.SettingUp.Way;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.finding.Finding;
import org.cupwright.formats.CoordinateFrame;
import org.cupwright.formats.outlines.OutlineRequest;
import org.cupwright.formats.outlines.ReadCourse;
import org.cupwright.message.Message.Length;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;

/** Second step, by a map file: its greens, with lines of play, bunkers and tees where the map has them. */
public record MapStep(Session session) {
    public static final String FILE = "file";

    /** Greens that the map names no hole for are called so by its reader. */
    private static final String MADE_UP = "G[0-9]+";

    /**
     * What a map brought.
     *
     * @param added greens of holes and practice greens that are new
     * @param there those that were there already
     * @param findings what is doubtful about the file
     */
    public record Brought(int added, int there, List<Finding> findings) {}

    /** @throws WrongFields if the file cannot be read, or is of somewhere else */
    public Brought keep(SourceFile file) {
        SettingUp before = new BeginCourse(session).stands();
        ReadCourse read = read(file, before.place());
        List<BegunGreen> fresh = new ArrayList<>();
        new BeginCourse(session).keep(stands -> {
            fresh.clear();
            SettingUp next = stands;
            for (Hole hole : read.course().holes()) {
                if (stands.greens().stream()
                        .noneMatch(
                                green -> green.placed() && green.hole().green().isSameGreenAs(hole.green()))) {
                    BegunGreen green = BegunHazards.near(next, green(next, hole, read.course()));
                    fresh.add(green);
                    next = next.with(green);
                }
            }
            return GreenAdded.refuseTooMany(next, FILE, file.name());
        });
        return new Brought(fresh.size(), read.course().holes().size() - fresh.size(), read.findings());
    }

    /** @throws WrongFields always: there is no file to read */
    public void refuseNoFile() {
        throw new WrongFields(Map.of(FILE, Problem.of("begin.noFile", FILE, "")));
    }

    private static ReadCourse read(SourceFile file, Place place) {
        OutlineRequest wanted = new OutlineRequest(
                place.id(),
                Optional.of(place.name()),
                place.zone(),
                Optional.of(CoordinateFrame.of(place.epsg())),
                Map.of());
        try {
            ReadCourse read = MapFile.read(file, wanted);
            double away = read.course().holes().get(0).green().centroid().distanceMetres(TypedPlace.of(place));
            boolean elsewhere = read.course().frame().epsg() != place.epsg();
            if (elsewhere || away > TypedPlace.FARTHEST_METRES) {
                throw Problem.of("begin.mapElsewhere", FILE, file.name(), new Length(away), new Name(place.name()));
            }
            return read;
        } catch (Problem refused) {
            throw new WrongFields(Map.of(FILE, refused));
        }
    }

    /** Named as the map has it, unless another green has the name. */
    private static BegunGreen green(SettingUp stands, Hole hole, Course map) {
        boolean practice = map.isPractice(hole.id());
        boolean taken = stands.ofHoles().stream()
                .anyMatch(other -> other.named() && other.hole().id().equals(hole.id()));
        boolean named = !practice && !taken && !hole.id().matches(MADE_UP);
        return new BegunGreen(stands.nextNumber(), Way.MAP, hole, named, practice, true, Optional.empty());
    }
}
