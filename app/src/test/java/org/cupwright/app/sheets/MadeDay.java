package org.cupwright.app.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.answers.BlockText;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.desk.paper.PaperSize;
import org.cupwright.app.desk.plan.CutSoFar;
import org.cupwright.app.maps.GreenDrawing;
import org.cupwright.app.maps.MadeDrawing;
import org.cupwright.app.maps.OldHoleOnMap;
import org.cupwright.app.storage.DaySpeed;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Hole;
import org.cupwright.course.MapPoint;
import org.cupwright.democourse.DemoCourse;
import org.cupwright.green.GreenFrame;
import org.cupwright.green.OnConvention;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.Verdict;
import org.cupwright.policy.Policy;
import org.cupwright.settingout.SettingOut;
import org.cupwright.units.UnitSystem;

/** An invented day on the invented course, with a warning of every kind. */
final class MadeDay {
    static final DemoCourse DEMO = new DemoCourse(1);

    static final String THUNDER = "Thunder: stop, take shelter, wait 30 minutes after the last clap.";

    private MadeDay() {}

    static DaySheet on(PaperSize paper) {
        Policy policy = Policy.defaults().with(PaperPolicy.PAPER, paper);
        List<SheetHole> holes =
                DEMO.course().holes().stream().map(hole -> hole(hole, policy)).toList();
        return new DaySheet(
                DemoCourse.NAME,
                DemoCourse.TODAY,
                DaySpeed.of(10, DaySpeed.From.SEASON),
                CutSoFar.NOTHING,
                holes,
                new BlockText(
                        Texts.find("en", Door.COMMANDS, UnitSystem.METRIC, 0.914)
                                .orElseThrow(),
                        DEMO.course()),
                List.of(THUNDER),
                policy);
    }

    private static final PersonsOpinion USUAL = new PersonsOpinion(
            PersonsOpinion.Kind.USUAL, Optional.empty(), Optional.of("Invented Person"), Optional.empty());

    private static SheetHole hole(Hole hole, Policy policy) {
        MapPoint spot = spot(hole);
        MapPoint last = frame(hole).at(2, -3);
        boolean measured = DEMO.levelReadings(hole.id()).isEmpty()
                && !DEMO.survey(hole.id()).isEmpty();
        GreenDrawing drawing =
                measured ? MadeDrawing.surveyed(hole, DEMO.trueSurface(hole.id())) : MadeDrawing.of(hole);
        return new SheetHole(
                hole.id(),
                Optional.of(cut(hole, spot, measured, policy)),
                Optional.of(frame(hole).place(last)),
                Optional.empty(),
                MadeDrawing.used(
                                drawing,
                                at -> hole.green().distanceToEdgeMetres(at) < 3.6,
                                at -> at.distanceMetres(last) < 2,
                                new OldHoleOnMap(last, 1))
                        .withSpots(List.of(spot)),
                false,
                notices(hole.id()),
                Optional.empty(),
                Optional.empty());
    }

    /** The same day with more to know than the first quarter holds, before the round and at two holes. */
    static DaySheet withMuchToKnow(PaperSize paper) {
        DaySheet day = on(paper);
        List<String> first = new ArrayList<>();
        for (int i = 1; i <= 12; i++) {
            first.add("Urgent, green " + i + ": an invented pipe burst behind the green and the ground is soft there"
                    + " (Invented Person, Thu 18 Jun 2026 06:50)");
        }
        first.add(THUNDER);
        List<SheetHole> holes = day.holes().stream()
                .map(hole -> switch (hole.hole()) {
                    case "5" -> noticed(hole, true, List.of("Played to the temporary green."));
                    case "8" ->
                        noticed(
                                hole,
                                false,
                                List.of(
                                        "Closed until Fri 19 Jun 2026 (disease): back left · 22 on · 5 from left",
                                        "High plug: soil out, never stamp: middle centre · 14 on · 9 from left",
                                        "Damaged plug: front right · 6½ on · 4½ from right",
                                        "Hole 1 is on this green too, only 9.5 m away; 18.3 m are wanted."));
                    default -> hole;
                })
                .toList();
        return new DaySheet(
                day.course(), day.date(), day.speed(), day.soFar(), holes, day.blocks(), first, day.policy());
    }

    private static SheetHole noticed(SheetHole hole, boolean temporary, List<String> notices) {
        return new SheetHole(
                hole.hole(),
                hole.cut(),
                hole.lastHole(),
                hole.roughHole(),
                hole.drawing(),
                temporary,
                notices,
                Optional.empty(),
                Optional.empty());
    }

    private static List<String> notices(String hole) {
        return switch (hole) {
            case "4" -> List.of("Set aside today (slope): Slope 3.4 %: steeper than 3 %.");
            case "7" -> List.of("Use with care: Slope 2.9 %: near the limit of 3 %.");
            default -> List.of();
        };
    }

    /** Off the middle, for every hole another way. */
    static MapPoint spot(Hole hole) {
        int number = Integer.parseInt(hole.id());
        return frame(hole).at(2.5 * (number % 5 - 2), 2 * (number % 7 - 3));
    }

    private static SheetHole.Cut cut(Hole hole, MapPoint spot, boolean measured, Policy policy) {
        SettingOut settingOut = SettingOut.of(hole, policy);
        boolean crowded = hole.id().equals("12");
        Set<RuleId> setAside = hole.id().equals("4") ? Set.of(RuleId.LEVEL) : Set.of();
        return new SheetHole.Cut(
                settingOut.directions(spot, crowded ? 0.25 : 1.5, Optional.empty()),
                crowded ? settingOut.directions(frame(hole).at(1, 1)).place() : Optional.empty(),
                !hole.id().equals("10"),
                hole.id().equals("7") ? Verdict.CAUTION : Verdict.PASS,
                measured,
                setAside,
                measured ? Optional.empty() : Optional.of(USUAL));
    }

    private static GreenFrame frame(Hole hole) {
        return GreenFrame.of(hole, OnConvention.ALONG_CHORD).orElseThrow();
    }
}
