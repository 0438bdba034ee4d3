package org.cupwright.app.answers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.Side;
import org.cupwright.green.Third;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.EnumNames;

/**
 * Where one hole is on one day, in the few words that a table of holes by days has room for: on the screen, on paper
 * and wherever else.
 *
 * @param hole the hole as planned; empty where the plan has none
 */
public record WeekCell(Texts texts, Optional<StoredHole> hole) {
    /** What is out of the usual; the gravest first. */
    public enum Sign {
        SET_ASIDE,
        CARE,
        ASKED,
        FIXED,
        STAYS
    }

    /** The third of the green; empty where there is no hole, or no line of play. */
    public Optional<Third> third() {
        return place().map(PlaceOnGreen::third);
    }

    /** The number of the course's own area it lies in, where the day's scheme names one. */
    public Optional<String> number() {
        return hole.flatMap(StoredHole::area);
    }

    /** {@code 3 back}: with the number of the course's own area, where the day's scheme names one. */
    public String numbered() {
        return number().map(number -> number
                        + third().map(third -> " " + texts.say("weeks.third." + EnumNames.lowerCamel(third)))
                                .orElse(""))
                .orElseGet(this::area);
    }

    /** {@code back R}; {@code –} where there is no hole and {@code ?} where there is no line of play. */
    public String area() {
        return third().map(third -> texts.say("weeks.third." + EnumNames.lowerCamel(third)) + " " + lateral())
                .orElseGet(this::unknown);
    }

    /** {@code B}; {@code –} where there is no hole and {@code ?} where there is no line of play. */
    public String letter() {
        return third().map(third -> texts.say("sheet.flagLetter." + EnumNames.lowerCamel(third)))
                .orElseGet(this::unknown);
    }

    private String unknown() {
        return hole.isPresent() ? "?" : "–";
    }

    /** {@code R}: left, centre or right as seen from the fairway; empty where that is not known. */
    public String lateral() {
        return place().map(place -> texts.say("weeks.lateral." + EnumNames.lowerCamel(place.lateral())))
                .orElse("");
    }

    /** {@code on 12½}. */
    public Optional<String> on(double paceMetres) {
        return place().map(place -> texts.say("weeks.on", halves(place.onMetres(), paceMetres)));
    }

    /** {@code 12½}: the same without its word, where a head says it. */
    public Optional<String> onShort(double paceMetres) {
        return place().map(place -> halves(place.onMetres(), paceMetres));
    }

    /** {@code left 5}: paces from the nearer side edge. */
    public Optional<String> side(double paceMetres) {
        return place().map(place -> texts.say(
                place.side() == Side.LEFT ? "weeks.fromLeft" : "weeks.fromRight",
                halves(place.sideMetres(), paceMetres)));
    }

    /** {@code L 5}. */
    public Optional<String> sideShort(double paceMetres) {
        return place().map(place -> texts.say(
                place.side() == Side.LEFT ? "weeks.fromLeftShort" : "weeks.fromRightShort",
                halves(place.sideMetres(), paceMetres)));
    }

    public List<Sign> signs() {
        List<Sign> signs = new ArrayList<>();
        hole.ifPresent(planned -> {
            if (!planned.position().judgement().setAside().isEmpty()) {
                signs.add(Sign.SET_ASIDE);
            } else if (planned.position().judgement().verdict() != Verdict.PASS) {
                signs.add(Sign.CARE);
            }
            if (planned.stays()) {
                signs.add(Sign.STAYS);
            } else if (planned.askedBy().isPresent()) {
                signs.add(Sign.ASKED);
            } else if (planned.locked()) {
                signs.add(Sign.FIXED);
            }
        });
        return signs;
    }

    /** A sign as it is printed. */
    public String say(Sign sign) {
        return texts.say("weeks.sign." + EnumNames.lowerCamel(sign));
    }

    private Optional<PlaceOnGreen> place() {
        return hole.flatMap(planned -> planned.position().place());
    }

    private String halves(double metres, double paceMetres) {
        return new PositionText(texts, paceMetres).halves(metres);
    }
}
