package org.cupwright.app.office.green;

import java.util.List;
import java.util.Optional;
import org.cupwright.app.answers.DayText;
import org.cupwright.app.answers.GreenText;
import org.cupwright.app.answers.JudgementText;
import org.cupwright.app.answers.PositionText;
import org.cupwright.app.answers.ToldPosition;
import org.cupwright.app.desk.green.GreenOnDay;
import org.cupwright.app.desk.green.JudgedGreen;
import org.cupwright.app.desk.log.HolesCut.HoleCut;
import org.cupwright.app.desk.plan.ShowHole;
import org.cupwright.app.maps.GreenDrawing;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.maps.MapFrame;
import org.cupwright.app.storage.StoredPlan.State;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.green.PlacePolicy;
import org.cupwright.policy.EnumNames;

/** A green in the words and the order of its page. */
record GreenView(Visit visit, ShowHole.Answer stands, JudgedGreen green) {
    /**
     * The page.
     *
     * @param hole its name
     * @param title which green
     * @param day the day and the speed it is judged for, and where that comes from
     * @param spot where the hole is, or is to be; empty where nobody says
     * @param standing whether that is planned or cut, or that there is nothing
     * @param verdict the verdict there with what goes with it; empty without a spot
     * @param key the same by its key
     * @param holes all holes
     * @param map the picture
     * @param signs what its signs mean
     * @param stepUnits half a pace in drawing units
     * @param startX where the cross stands at first, drawing units
     * @param startY and down
     */
    record Page(
            String hole,
            String title,
            String day,
            Optional<String> spot,
            String standing,
            Optional<String> verdict,
            String key,
            List<Link> holes,
            Optional<String> before,
            Optional<String> after,
            String map,
            List<String> signs,
            double stepUnits,
            double startX,
            double startY) {}

    /** The way to another hole. */
    record Link(String hole, boolean here) {}

    Page page(GreenDrawing drawing) {
        Texts texts = visit.texts();
        Hole hole = stands.hole();
        Optional<MapPoint> at = spot();
        Optional<ToldPosition> told = at.map(green::at).map(judgements()::told);
        MapFrame frame = GreenMap.groundFrame(hole);
        MapPoint start = at.orElseGet(hole.green()::centroid);
        List<String> ids = stands.course().holes().stream().map(Hole::id).toList();
        int here = ids.indexOf(hole.id());
        return new Page(
                hole.id(),
                texts.say("map.title", hole.id()),
                texts.day(visit.date()) + " · "
                        + new DayText(texts)
                                .whence(green.day().speed(), green.day().rain()),
                stands.spot()
                        .map(point -> told.map(ToldPosition::where)
                                .orElseGet(() -> positions().coordinates(point))),
                standing(),
                told.map(ToldPosition::summary),
                told.map(ToldPosition::verdict).orElse(""),
                ids.stream().map(id -> new Link(id, id.equals(hole.id()))).toList(),
                here > 0 ? Optional.of(ids.get(here - 1)) : Optional.empty(),
                here < ids.size() - 1 ? Optional.of(ids.get(here + 1)) : Optional.empty(),
                new GreenMap(texts).picture(drawing),
                new GreenMap(texts).key(drawing),
                frame.length(paceMetres() / 2),
                frame.x(start),
                frame.y(start));
    }

    private Optional<MapPoint> spot() {
        return stands.spot().filter(stands.hole().green()::contains);
    }

    /** The green as judged on the day, with the day's spot. */
    GreenDrawing drawing() {
        GreenOnDay onDay = green.green();
        return GreenDrawing.of(onDay.judgement(), onDay.ground())
                .withTitle(new GreenText(visit.texts()).pictureTitle(green.day(), stands.hole()))
                .withSpots(spot().stream().toList());
    }

    /** Planned, published, cut, left, or nothing. */
    private String standing() {
        Texts texts = visit.texts();
        if (stands.cut().isPresent()) {
            HoleCut cut = stands.cut().get();
            String key = cut.inPlay() ? "inPlay" : cut.at().isPresent() ? "cut" : "left";
            return texts.say("green.stands." + key, cut.time().toString(), cut.person());
        }
        if (stands.planned().isEmpty()) {
            return texts.say(stands.plan().isPresent() ? "green.stands.leftOut" : "green.stands.noPlan");
        }
        State state = stands.plan().get().state();
        String said = texts.say("green.stands.planned", texts.say("state." + EnumNames.lowerCamel(state)));
        return stands.planned().get().stays() ? said + ", " + texts.say("green.stands.stays") : said;
    }

    private JudgementText judgements() {
        return new JudgementText(visit.texts(), paceMetres());
    }

    private PositionText positions() {
        return new PositionText(visit.texts(), paceMetres());
    }

    private double paceMetres() {
        return green.day().policy().get(PlacePolicy.PACE_METRES);
    }
}
