package org.cupwright.app.field;

import java.util.Optional;
import org.cupwright.app.desk.green.GreenOnDay;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.maps.MapFrame;
import org.cupwright.app.sheets.SheetHole;
import org.cupwright.app.storage.Asked;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.PlacePolicy;
import org.cupwright.holelocation.HoldPolicy;
import org.cupwright.policy.Policy;
import org.cupwright.rotation.Aims;
import org.cupwright.rotation.RotationPolicy;
import org.cupwright.rotation.counting.Shares;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What a phone needs to say of other spots than the day's, green by green and of the day as a whole. */
record GroundOfRound(DayPaper paper, Texts texts) {
    private Policy policy() {
        return paper.day().policy();
    }

    /** How the day's holes are to be spread, how long a pace is, and how a ball is to stop by the hole. */
    void day(ObjectNode out) {
        out.put("pace", policy().get(PlacePolicy.PACE_METRES));
        Aims aims = new Aims(policy(), false);
        ObjectNode shares = out.putObject("shares");
        if (aims.balancesThirds()) {
            shares(aims.thirds(), shares.putArray("third"));
        }
        shares(Shares.THIRDS, shares.putArray("lateral"));
        shares(aims.difficulties(), shares.putArray("plays"));
        out.put("holds", texts.length(policy().get(HoldPolicy.HOLD_METRES)));
        out.put("holdsWithCare", texts.length(policy().get(HoldPolicy.HOLD_CAUTION_METRES)));
        out.put("past", texts.length(policy().get(HoldPolicy.PAST_METRES)));
        out.put("areaOnly", paper.plan().leavesTheSpots());
    }

    private static void shares(Shares shares, ArrayNode out) {
        out.add(shares.first()).add(shares.second()).add(shares.third());
    }

    /** A green on which a hole is cut today. */
    void hole(SheetHole hole, ObjectNode out) {
        String id = hole.hole();
        Optional<Asked> asked = paper.plan().asked().stream()
                .filter(one -> one.hole().equals(id))
                .findFirst();
        ObjectNode ground = new CarriedGround(green(id), asked, policy()).document();
        out.set("ground", ground);
        onMap(new GreenMap(texts).frame(hole.drawing()), ground.putArray("map"));
        paper.position(id).ifPresent(position -> spot(position, ground));
        paper.plan().find(id).flatMap(StoredHole::area).ifPresent(area -> ground.put("area", area));
        others(id, ground.putArray("others"));
        ground.put("apartMetres", policy().get(RotationPolicy.SHARED_GREEN_LEAST_METRES));
    }

    private GreenOnDay green(String hole) {
        return paper.greens().stream()
                .filter(green -> green.hole().id().equals(hole))
                .findFirst()
                .orElseThrow();
    }

    /** The ground that the map shows: at its corner, and how far on a unit of the drawing is, across and down. */
    static void onMap(MapFrame frame, ArrayNode out) {
        MapPoint corner = frame.ground(0, 0);
        MapPoint across = frame.ground(frame.width(), 0);
        MapPoint down = frame.ground(0, frame.height());
        CarriedGround.point(corner, out);
        out.add((across.east() - corner.east()) / frame.width()).add((across.north() - corner.north()) / frame.width());
        out.add((down.east() - corner.east()) / frame.height()).add((down.north() - corner.north()) / frame.height());
    }

    /** Where the hole is to be, and what it counts as among the day's. */
    private void spot(JudgedPosition position, ObjectNode out) {
        CarriedGround.point(position.judgement().position(), out.putArray("spot"));
        ObjectNode part = out.putObject("part");
        position.place().map(PlaceOnGreen::third).ifPresent(third -> part.put("third", third.ordinal()));
        position.place().map(PlaceOnGreen::lateral).ifPresent(lateral -> part.put("lateral", lateral.ordinal()));
        position.judgement().difficulty().rank().ifPresent(rank -> part.put("plays", rank.ordinal()));
    }

    /** The day's other holes on the same green. */
    private void others(String hole, ArrayNode out) {
        paper.day().course().onGreenOf(green(hole).hole()).stream()
                .filter(other -> !other.equals(hole))
                .flatMap(other -> paper.position(other).stream())
                .forEach(other -> CarriedGround.point(other.judgement().position(), out.addArray()));
    }
}
