package org.cupwright.app.answers.json;

import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.app.desk.green.GreenPlaces;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.course.Course;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.Side;
import org.cupwright.holelocation.Judgement;
import org.cupwright.policy.Policy;
import org.cupwright.units.Paces;

/** Places on a day's greens, and how they are judged. */
final class PlaceShapes {
    private final GreenPlaces greens;
    private final double paceMetres;

    PlaceShapes(Course course, Policy policy) {
        this.greens = new GreenPlaces(course, policy);
        this.paceMetres = policy.get(PlacePolicy.PACE_METRES);
    }

    /** A point on a hole's green. */
    Shape at(String hole, MapPoint at) {
        return at(greens.find(hole, at), at);
    }

    /** A place of which nothing was asked but where it is. */
    Shape at(Optional<PlaceOnGreen> place, MapPoint at) {
        return new Shape()
                .with("east", at.east())
                .with("north", at.north())
                .with("onPaces", place.map(found -> halves(found.onMetres())))
                .with("side", place.map(found -> found.side() == Side.LEFT ? "L" : "R"))
                .with("sidePaces", place.map(found -> halves(found.sideMetres())))
                .with("third", place.map(PlaceOnGreen::third))
                .with("lateral", place.map(PlaceOnGreen::lateral));
    }

    Shape at(JudgedPosition position) {
        OptionalDouble good = position.goodWithinMetres();
        return at(position.place(), position.judgement().position())
                .with(
                        "goodWithinPaces",
                        good.isPresent() ? Paces.roundedDownToHalf(good.getAsDouble(), paceMetres) : null);
    }

    private double halves(double metres) {
        return Paces.roundedToHalf(metres, paceMetres);
    }

    /** A position with its verdict, as a list of them has it. */
    Shape listed(JudgedPosition position) {
        return at(position)
                .with(verdict(position))
                .with("difficulty", position.judgement().difficulty());
    }

    /** The position, and what comes of it. */
    Shape judged(JudgedPosition position) {
        return new Shape().with("position", at(position)).with(verdict(position));
    }

    private static Shape verdict(JudgedPosition position) {
        Judgement judgement = position.judgement();
        return new Shape()
                .with("verdict", judgement.verdict())
                .with("restsOn", judgement.restsOn())
                .with("word", judgement.word());
    }
}
