package org.cupwright.app.sheets;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.cupwright.app.answers.BlockText;
import org.cupwright.app.answers.DayText;
import org.cupwright.app.answers.FirstText;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.first.Notice;
import org.cupwright.app.desk.green.GreenOnDay;
import org.cupwright.app.desk.plan.CutSoFar;
import org.cupwright.app.desk.plan.DayPaper;
import org.cupwright.app.desk.round.RoundOfDay;
import org.cupwright.app.maps.AreaOnMap;
import org.cupwright.app.maps.GreenDrawing;
import org.cupwright.app.storage.DaySpeed;
import org.cupwright.app.storage.JudgedPosition;
import org.cupwright.app.storage.StoredHole;
import org.cupwright.app.storage.StoredPlan;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.course.Loop;
import org.cupwright.course.MapPoint;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.OnConvention;
import org.cupwright.green.PlaceOnGreen;
import org.cupwright.green.PlacePolicy;
import org.cupwright.green.RestsOn;
import org.cupwright.holelocation.judging.GoodWithin;
import org.cupwright.policy.Policy;
import org.cupwright.settingout.Directions;
import org.cupwright.settingout.SettingOut;
import org.cupwright.turf.state.RoughHole;

/**
 * A day's hole locations as paper needs them.
 *
 * @param course the course's name
 * @param date the day
 * @param speed the speed the day was judged at, and where it comes from
 * @param soFar how much of the plan has been cut
 * @param holes in round order, those of practice greens last
 * @param blocks the parts of the course they belong to, in the same order
 * @param first what has to be known before anything else, the gravest first
 * @param policy the course's settings
 * @param round in which order and by when the holes are cut, and by whom; empty where nothing is known of it
 */
public record DaySheet(
        String course,
        LocalDate date,
        DaySpeed speed,
        CutSoFar soFar,
        List<SheetHole> holes,
        BlockText blocks,
        List<String> first,
        Policy policy,
        Optional<RoundOfDay> round) {
    public DaySheet {
        first = List.copyOf(first);
        holes = List.copyOf(holes);
    }

    /** A day whose holes one person cuts as they are played. */
    DaySheet(
            String course,
            LocalDate date,
            DaySpeed speed,
            CutSoFar soFar,
            List<SheetHole> holes,
            BlockText blocks,
            List<String> first,
            Policy policy) {
        this(course, date, speed, soFar, holes, blocks, first, policy, Optional.empty());
    }

    /** The holes of a part of the course, in its order. */
    public List<SheetHole> holes(Loop block) {
        return block.holes().stream()
                .flatMap(name -> holes.stream().filter(hole -> hole.hole().equals(name)))
                .toList();
    }

    /** The same day with its parts and their holes as they are gone to. */
    public DaySheet inRoundOrder(Texts texts) {
        return round.map(of -> new DaySheet(
                        course, date, speed, soFar, holes, new BlockText(texts, of.parts()), first, policy, round))
                .orElse(this);
    }

    /** The same day with some of its holes. */
    public DaySheet of(List<SheetHole> some) {
        return new DaySheet(course, date, speed, soFar, some, blocks, first, policy, round);
    }

    /** From where "on" is measured. */
    public OnConvention convention() {
        return policy.get(PlacePolicy.ON_CONVENTION);
    }

    public double paceMetres() {
        return policy.get(PlacePolicy.PACE_METRES);
    }

    /** Paper of the day, begun. */
    Page page(String kind, String margin, Texts texts) {
        return new Page(kind, margin, course, date, policy, texts);
    }

    /** The speed that was judged for. */
    static String speed(DaySpeed speed, Texts texts) {
        return new DayText(texts).whence(speed);
    }

    /** Whether the holes are where they were planned or where they were cut. */
    public String state(Texts texts) {
        String time = soFar.last().map(LocalTime::toString).orElse("");
        if (soFar.all()) {
            return texts.say("sheet.asCutAt", time);
        }
        return soFar.holes().isEmpty()
                ? texts.say("sheet.planned")
                : texts.say("sheet.partlyCut", time, String.join(", ", soFar.holes()));
    }

    /** A day's sheet from its plan. */
    public static DaySheet of(DayPaper paper, Texts texts) {
        CourseDay day = paper.day();
        FirstText first = new FirstText(texts, day);
        List<SheetHole> holes = paper.greens().stream()
                .map(green -> hole(green, paper, first, texts))
                .toList();
        return new DaySheet(
                day.course().name(),
                day.date(),
                day.speed(),
                paper.soFar(),
                holes,
                new BlockText(texts, day.course()),
                paper.first().before().stream().map(first::says).toList(),
                day.policy(),
                Optional.of(paper.round()));
    }

    private static SheetHole hole(GreenOnDay green, DayPaper paper, FirstText first, Texts texts) {
        Hole hole = green.hole();
        Policy policy = paper.day().policy();
        Optional<JudgedPosition> position = paper.position(hole.id());
        List<Notice> notices = paper.first().at(hole.id());
        GreenDrawing drawing = GreenDrawing.of(green.judgement(), green.ground());
        Optional<MapPoint> spot = position.map(found -> found.judgement().position());
        return new SheetHole(
                hole.id(),
                position.map(found -> cut(green, found, policy)),
                green.lastHole().flatMap(at -> place(hole, at, policy)),
                green.roughHole().map(RoughHole::part),
                drawing.withAreas(areas(green)).withSpots(spot.stream().toList()),
                notices.stream().anyMatch(notice -> notice.kind() == Notice.Kind.TEMPORARY),
                notices.stream().map(first::says).toList(),
                paper.plan().find(hole.id()).flatMap(StoredHole::since),
                area(hole, paper.plan(), texts));
    }

    private static List<AreaOnMap> areas(GreenOnDay green) {
        return green.areas().stream()
                .map(one -> new AreaOnMap(one.area().number(), one.area().place(), one.today()))
                .toList();
    }

    private static Optional<String> area(Hole hole, StoredPlan plan, Texts texts) {
        Optional<StoredHole> planned = plan.find(hole.id());
        boolean pick =
                plan.leavesTheSpots() && planned.filter(one -> !one.stays()).isPresent();
        return planned.flatMap(StoredHole::area)
                .map(number -> texts.say(pick ? "sheet.card.areaOnly" : "sheet.card.area", number));
    }

    private static SheetHole.Cut cut(GreenOnDay green, JudgedPosition position, Policy policy) {
        Hole hole = green.hole();
        SettingOut settingOut = SettingOut.of(hole, policy);
        MapPoint at = position.judgement().position();
        Directions directions = position.goodWithinMetres().isPresent()
                ? settingOut.directions(
                        at,
                        position.goodWithinMetres().getAsDouble(),
                        GoodWithin.of(position.judgement(), green.judgement()).moreRoom())
                : settingOut.directions(at);
        return new SheetHole.Cut(
                directions,
                RoomElsewhere.find(
                        green, position.judgement(), directions, settingOut, policy.get(PlacePolicy.PACE_METRES)),
                settingOut.leadToOnePlace(directions),
                position.judgement().verdict(),
                position.judgement().restsOn() != RestsOn.OUTLINE,
                position.judgement().setAside(),
                position.judgement().word());
    }

    /** Where an old hole is as the changer says it; one that lies off the green now has no such place. */
    private static Optional<PlaceOnGreen> place(Hole hole, MapPoint at, Policy policy) {
        return hole.green().contains(at)
                ? GreenFrame.of(hole, policy.get(PlacePolicy.ON_CONVENTION)).map(frame -> frame.place(at))
                : Optional.empty();
    }
}
