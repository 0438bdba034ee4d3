package org.cupwright.rotation.weeks;

import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.holelocation.RuleId;
import org.cupwright.rotation.candidate.Candidate;

/**
 * A hole that is elsewhere than it stood.
 *
 * @param date the day
 * @param hole the hole
 * @param from where it stood, as the rules see it now on clear ground; empty where it had no hole
 * @param to where it is now; empty where it has none
 * @param cause why it could not stay
 */
public record HoleChange(LocalDate date, String hole, Optional<Candidate> from, Optional<Candidate> to, Cause cause) {

    /** Why a hole could not stay. */
    public sealed interface Cause {}

    /** Somebody fixed it elsewhere. */
    public record Fixed() implements Cause {}

    /** Somebody ruled out the ground where it stood. */
    public record RuledOut() implements Cause {}

    /** The green is not in play, or has no ground left that day. */
    public record GreenClosed() implements Cause {}

    /** The green is in play again. */
    public record GreenOpen() implements Cause {}

    /** It stood on ground that is kept for a coming event. */
    public record GroundSaved() implements Cause {}

    /** It stood outside the areas in one of which the day's hole is to be. */
    public record OutsideArea() implements Cause {}

    /** A rule now refuses the spot: for what lies on the green, the green's speed or the weather. */
    public record RuleBroken(RuleId rule) implements Cause {}

    /** The ground rests there about a hole that was cut before these days, as it now is known. */
    public record GroundRests() implements Cause {}

    /** The ground there and that of another hole, which was moved too, are too near to each other. */
    public record FollowsFrom(String hole, LocalDate date) implements Cause {}

    /** It was moved on an earlier day and stays there, as holes are not changed on this one. */
    public record Stays(LocalDate since) implements Cause {}

    /** Other holes of the day came to lie so that this one evens the day out. */
    public record EvensOut() implements Cause {}
}
