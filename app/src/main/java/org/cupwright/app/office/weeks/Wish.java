package org.cupwright.app.office.weeks;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.cupwright.app.visit.GroundUnit;
import org.cupwright.message.Message;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.units.WrittenNumber;

/**
 * One thing that somebody wants otherwise. In addresses it stands as {@code here:2026-06-21:7},
 * {@code away:2026-06-21:3:7} or {@code swap:2026-06-21:2026-06-23:7}: the hole last, which may be called anything.
 *
 * @param on the day
 * @param hole the hole
 * @param other for {@link Kind#SWAP} the other day
 * @param metres for {@link Kind#AWAY} how far from the spot
 */
record Wish(Kind kind, LocalDate on, String hole, Optional<LocalDate> other, Optional<Double> metres) {
    private static final double MILLIMETRES = 1000;

    /** What is wanted. */
    enum Kind {
        /** The hole stays where it is planned. */
        HERE,
        /** It is not there, nor near. */
        AWAY,
        /** What was asked for it no longer counts. */
        FREE,
        /** Its spot is spoiled for every day. */
        SPOILED,
        /** Its spots of two days are exchanged. */
        SWAP;

        String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** @throws Problem when it is none */
    static Wish of(String text) {
        try {
            Kind kind = Kind.valueOf(text.substring(0, text.indexOf(':')).toUpperCase(Locale.ROOT));
            int count = kind == Kind.AWAY || kind == Kind.SWAP ? 4 : 3;
            String[] parts = text.split(":", count);
            if (parts.length < count) {
                throw notOne(text);
            }
            return new Wish(
                            kind,
                            LocalDate.parse(parts[1]),
                            parts[parts.length - 1],
                            kind == Kind.SWAP ? Optional.of(LocalDate.parse(parts[2])) : Optional.empty(),
                            kind == Kind.AWAY ? Optional.of(metres(parts[2], text)) : Optional.empty())
                    .checked(text);
        } catch (IllegalArgumentException | DateTimeParseException | IndexOutOfBoundsException wrong) {
            throw notOne(text);
        }
    }

    private static double metres(String written, String text) {
        return WrittenNumber.find(written.strip())
                .filter(metres -> metres > 0 && metres <= GroundUnit.MOST_METRES)
                .orElseThrow(() -> notOne(text));
    }

    /** A length as it stands in addresses, to the millimetre. */
    static String written(double metres) {
        return WrittenNumber.of(Math.rint(MILLIMETRES * metres) / MILLIMETRES);
    }

    private Wish checked(String text) {
        if (hole.isBlank() || other.equals(Optional.of(on))) {
            throw notOne(text);
        }
        return this;
    }

    private static Problem notOne(String text) {
        return Problem.of(Message.of("problem.notAWish", new Name(text)), Message.of("try.notAWish"));
    }

    String text() {
        List<String> parts = new ArrayList<>(List.of(kind.key(), on.toString()));
        other.ifPresent(day -> parts.add(day.toString()));
        metres.ifPresent(length -> parts.add(WrittenNumber.of(length)));
        parts.add(hole);
        return String.join(":", parts);
    }

    /** Whether it is about a hole on a day. */
    boolean isOf(LocalDate day, String name) {
        return hole.equals(name) && (on.equals(day) || other.equals(Optional.of(day)));
    }

    /** Whether it takes the place of another: both cannot be had. */
    boolean replaces(Wish earlier) {
        return !equals(earlier) && earlier.isOf(on, hole)
                || other.filter(day -> earlier.isOf(day, hole)).isPresent();
    }
}
