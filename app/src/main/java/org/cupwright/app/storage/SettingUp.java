package org.cupwright.app.storage;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.units.Heading;

/**
 * A course that is being set up, as far as it has come. It is no course before it is done: nothing is planned on it.
 *
 * @param place what it is called and where it lies
 * @param picture how the aerial picture lies on the ground, where one is used; the picture itself is not kept
 * @param greens in the order in which they came in
 * @param decided whether the first settings have been looked through
 * @param done whether the course was made of it
 */
public record SettingUp(
        Place place, Optional<PictureOnGround> picture, List<BegunGreen> greens, boolean decided, boolean done) {
    /**
     * What a course is called and where it lies.
     *
     * @param id short name for commands and files
     * @param name the name people use
     * @param zone the zone whose days are its days
     * @param longitudeDegrees east, WGS84
     * @param latitudeDegrees north, WGS84
     * @param epsg its frame, in which all its greens are kept
     */
    public record Place(
            String id, String name, ZoneId zone, double longitudeDegrees, double latitudeDegrees, int epsg) {}

    /**
     * A picture and two points on it that are known on the ground.
     *
     * @param widthPixels of the picture
     * @param heightPixels of the picture
     * @param first one of the points
     * @param second the other
     */
    public record PictureOnGround(int widthPixels, int heightPixels, Known first, Known second) {}

    /**
     * A point of a picture that is known on the ground.
     *
     * @param right pixels from the left edge
     * @param down pixels from the upper edge
     * @param at where it is, in the course's frame
     */
    public record Known(double right, double down, MapPoint at) {}

    /** From what a green came. */
    public enum Way {
        MAP,
        PICTURE,
        PACED,
        /** On a grid of paces: nobody knows where it lies, and on the grid is the way of play, or north. */
        DRAWN
    }

    /**
     * A green.
     *
     * @param number by which it is known until it is done
     * @param way from what it came
     * @param hole its outline and what else is known; its name counts only where {@code named}
     * @param named whether its name is the hole's
     * @param leftOut whether it is no green of a hole: a practice or driving-range green
     * @param placed whether it lies where it is drawn; one of which nobody knows is drawn in a row with others
     * @param paced the measures it was made from, where it was paced
     */
    public record BegunGreen(
            int number, Way way, Hole hole, boolean named, boolean leftOut, boolean placed, Optional<Paced> paced) {
        public BegunGreen withHole(Hole other) {
            return new BegunGreen(number, way, other, named, leftOut, placed, paced);
        }
    }

    /** A unit in which people measure on a green; {@code PACES} are as long as was said. */
    public enum Measure {
        PACES,
        METRES,
        YARDS,
        FEET
    }

    /**
     * Measures of a green along a line from its front to its back.
     *
     * @param unit the unit of all lengths here
     * @param unitMetres how long that is, m
     * @param length of the line, which runs from edge to edge
     * @param rows offsets to both edges, the front first
     * @param along the way from front to back
     * @param front where the line begins, in the course's frame; empty where nobody knows
     */
    public record Paced(
            Measure unit, double unitMetres, double length, List<Row> rows, Heading along, Optional<MapPoint> front) {
        public Paced {
            rows = List.copyOf(rows);
        }

        public Paced towards(Heading other) {
            return new Paced(unit, unitMetres, length, rows, other, front);
        }
    }

    /** How far on, and from there how far to the edge on the left and on the right. */
    public record Row(double on, double left, double right) {}

    public SettingUp {
        greens = List.copyOf(greens);
    }

    public static SettingUp at(Place place) {
        return new SettingUp(place, Optional.empty(), List.of(), false, false);
    }

    public SettingUp withPlace(Place other) {
        return new SettingUp(other, picture, greens, decided, done);
    }

    public SettingUp withPicture(PictureOnGround other) {
        return new SettingUp(place, Optional.of(other), greens, decided, done);
    }

    public SettingUp withGreens(List<BegunGreen> others) {
        return new SettingUp(place, picture, others, decided, done);
    }

    /** With one green more, or another for the one of its number. */
    public SettingUp with(BegunGreen green) {
        List<BegunGreen> all = new ArrayList<>(greens);
        all.removeIf(other -> other.number() == green.number());
        all.add(green);
        all.sort(Comparator.comparingInt(BegunGreen::number));
        return withGreens(all);
    }

    public SettingUp without(int number) {
        return withGreens(
                greens.stream().filter(green -> green.number() != number).toList());
    }

    public SettingUp asDecided() {
        return new SettingUp(place, picture, greens, true, done);
    }

    public SettingUp asDone() {
        return new SettingUp(place, picture, greens, decided, true);
    }

    public Optional<BegunGreen> find(int number) {
        return greens.stream().filter(green -> green.number() == number).findFirst();
    }

    /** The number of the next green. */
    public int nextNumber() {
        return 1 + greens.stream().mapToInt(BegunGreen::number).max().orElse(0);
    }

    /** Those that are greens of holes. */
    public List<BegunGreen> ofHoles() {
        return greens.stream().filter(green -> !green.leftOut()).toList();
    }
}
