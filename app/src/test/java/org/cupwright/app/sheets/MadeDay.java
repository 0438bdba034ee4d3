package org.cupwright.app.sheets;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cupwright.app.desk.paper.PaperPolicy;
import org.cupwright.app.desk.paper.PaperSize;
import org.cupwright.app.desk.plan.CutSoFar;
import org.cupwright.app.maps.GreenDrawing;
import org.cupwright.app.maps.MadeDrawing;
import org.cupwright.app.maps.OldHoleOnMap;
import org.cupwright.app.storage.DaySpeed;
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

/** An invented day on the invented course, with a warning of every kind. */
final class MadeDay {
    static final DemoCourse DEMO = new DemoCourse(1);

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
                        .withSpots(List.of(spot)));
    }

    /** Off the middle, for every hole another way. */
    static MapPoint spot(Hole hole) {
        int number = Integer.parseInt(hole.id());
        return frame(hole).at(2.5 * (number % 5 - 2), 2 * (number % 7 - 3));
    }

    private static SheetHole.Cut cut(Hole hole, MapPoint spot, boolean measured, Policy policy) {
        Set<RuleId> setAside = hole.id().equals("4") ? Set.of(RuleId.LEVEL) : Set.of();
        return new SheetHole.Cut(
                SettingOut.of(hole, policy).directions(spot, 1.5, Optional.empty()),
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
