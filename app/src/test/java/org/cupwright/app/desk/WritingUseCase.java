package org.cupwright.app.desk;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.drawn.KeepDrawn;
import org.cupwright.app.desk.entry.CorrectFact;
import org.cupwright.app.desk.entry.Entry;
import org.cupwright.app.desk.entry.RecordFact;
import org.cupwright.app.desk.entry.Says;
import org.cupwright.app.desk.entry.SeeToOdd;
import org.cupwright.app.desk.entry.notebook.ImportHistory;
import org.cupwright.app.desk.entry.table.ImportTable;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.entry.typed.TypedEntry;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.desk.ground.DrawGround;
import org.cupwright.app.desk.ground.GroundWish;
import org.cupwright.app.desk.ground.TurnPlay;
import org.cupwright.app.desk.intake.ImportCourse;
import org.cupwright.app.desk.intake.ImportRequest;
import org.cupwright.app.desk.intake.ImportRequest.SurveyOptions;
import org.cupwright.app.desk.intake.SetUpDemo;
import org.cupwright.app.desk.level.Falls;
import org.cupwright.app.desk.level.KeepLevelReading;
import org.cupwright.app.desk.log.FactLines;
import org.cupwright.app.desk.plan.ChangeAsked;
import org.cupwright.app.desk.plan.ChangeWeeks;
import org.cupwright.app.desk.plan.HoleWish;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.desk.plan.PublishPlan;
import org.cupwright.app.desk.plan.PublishPlan.Step;
import org.cupwright.app.desk.plan.UndoChange;
import org.cupwright.app.desk.policy.ChangePolicy;
import org.cupwright.app.desk.policy.Settings;
import org.cupwright.app.desk.weather.ImportWeather;
import org.cupwright.app.session.Right;
import org.cupwright.app.session.Session;
import org.cupwright.course.Hazard;
import org.cupwright.cupchange.DayReading.SpeedRead;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.Side;
import org.cupwright.units.Heading;

/**
 * Every use case that writes, each doing one invented thing to {@link MadeDesk}.
 *
 * @param name what it is called here
 * @param right the right it needs
 * @param work does it
 */
record WritingUseCase(String name, Right right, Consumer<Session> work) {
    static List<WritingUseCase> all() {
        return List.of(
                of("cut as planned", Right.RECORD, asking -> new RecordFact(asking).record(cutAsPlanned("2"))),
                of("all as planned", Right.RECORD, asking -> new RecordFact(asking).record(cutAsPlanned("all"))),
                of("speed read", Right.RECORD, asking -> new RecordFact(asking).record(speedRead())),
                of("correct", Right.RECORD, asking -> new CorrectFact(asking).correct(correction())),
                of("withdraw", Right.RECORD, asking -> new CorrectFact(asking).withdraw(MadeDesk.NOTE.toString())),
                of("odd seen", Right.RECORD, asking -> new SeeToOdd(asking).seen(MadeDesk.ODD.toString())),
                of("lines", Right.RECORD, asking -> new FactLines(asking).read(file(MadeDesk.line()), true)),
                of(
                        "table",
                        Right.RECORD,
                        asking -> new ImportTable(asking)
                                .read(EntryForm.of("speedRead"), file(TABLE), Optional.empty(), false, true)),
                of(
                        "notebook",
                        Right.RECORD,
                        asking -> new ImportHistory(asking).read(file(NOTEBOOK), Optional.empty(), false, true)),
                of(
                        "weather",
                        Right.RECORD,
                        asking -> new ImportWeather(asking).read(weather("tmax,tmin\n2026-06-18,21"))),
                of(
                        "other weather",
                        Right.RECORD,
                        asking -> new ImportWeather(asking).read(weather("tmax,tmin\n2026-06-18,23"))),
                of("setting", Right.SET, asking -> settings(asking).set(MadeDesk.DAY, List.of(wanted("3.2")))),
                of("other setting", Right.SET, asking -> settings(asking).set(MadeDesk.DAY, List.of(wanted("3.4")))),
                of("plan", Right.PLAN, asking -> plan(asking, 2)),
                of(
                        "one hole asked for",
                        Right.PLAN,
                        asking -> new PlanDay(asking, "made")
                                .plan(today(), new HoleWish.Here("2", spot(9)), 2, Progress.unheard())),
                of(
                        "change of plans",
                        Right.PLAN,
                        asking -> new ChangeWeeks(asking, "made").change(today(), CHANGE, Progress.unheard())),
                of("change taken back", Right.PLAN, asking -> new UndoChange(asking).undo()),
                of(
                        "publish",
                        Right.PLAN,
                        asking -> new PublishPlan(asking).take(Step.PUBLISH, Optional.of(MadeDesk.DAY), false)),
                of(
                        "withdraw plan",
                        Right.PLAN,
                        asking -> new PublishPlan(asking).take(Step.WITHDRAW, Optional.of(MadeDesk.DAY), false)),
                of(
                        "map",
                        Right.SURVEY,
                        asking -> new ImportCourse(asking, MadeDesk.DAY).run(map(), Progress.unheard())),
                of("ground drawn", Right.SURVEY, WritingUseCase::bunker),
                of(
                        "drawing taken back",
                        Right.SURVEY,
                        asking -> new DrawGround(asking).takeBack("3", mapVersion(asking))),
                of(
                        "direction of play",
                        Right.SURVEY,
                        asking ->
                                new TurnPlay(asking).keep("3", Optional.of(Heading.ofDegrees(77)), mapVersion(asking))),
                of("demo", Right.SURVEY, asking -> new SetUpDemo(asking).ifMissing()),
                of("level reading", Right.SURVEY, asking -> level(asking).add(today(), "2", spot(6), falls())),
                of("same level reading", Right.SURVEY, asking -> level(asking).add(today(), "1", spot(5), falls())),
                of(
                        "level reading back",
                        Right.SURVEY,
                        asking -> level(asking).remove(today(), MadeDesk.READING, List.of())),
                of("drawn", Right.SURVEY, asking -> new KeepDrawn(asking).add(today(), "2", spot(7), usual())),
                of("drawn back", Right.SURVEY, asking -> new KeepDrawn(asking).remove(today(), MadeDesk.DRAWN)));
    }

    private static final ChangeAsked CHANGE = new ChangeAsked(
            List.of(new ChangeAsked.OnDay(Optional.empty(), new HoleWish.Here("3", spot(9)))),
            List.of(),
            List.of(),
            Optional.empty());
    private static final String TABLE = "date,hole,feet\n2026-06-14,,10.5\n";
    private static final String NOTEBOOK = "date,hole,on,side\n2026-06-10,1,12,L8\n2026-06-10,2,9,R7\n";

    private static WritingUseCase of(String name, Right right, Consumer<Session> work) {
        return new WritingUseCase(name, right, work);
    }

    private static Entry cutAsPlanned(String hole) {
        Says typed = new TypedEntry(
                Optional.of(EntryForm.of("cupChanged")),
                Map.of(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                true,
                Optional.empty());
        return new Entry(List.of(hole), true, Optional.of(MadeDesk.DAY), typed, Optional.empty(), false);
    }

    /** As a door says it that has nothing to read. */
    private static Entry speedRead() {
        SpeedRead read = new SpeedRead(10.5, OptionalDouble.empty());
        Says says = occasion -> new Says.Said(read, Optional.empty(), List.of());
        return new Entry(List.of(), false, Optional.of(MadeDesk.DAY), says, Optional.empty(), false);
    }

    private static CorrectFact.Change correction() {
        Map<String, String> parts = Map.of("text", "an invented note, put right");
        return new CorrectFact.Change(
                MadeDesk.NOTE.toString(),
                Optional.empty(),
                TypedEntry.change(parts, Optional.empty(), OptionalDouble.empty()),
                false);
    }

    private static SourceFile file(String text) {
        return new SourceFile("made", () -> new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    private static ImportWeather.Request weather(String rest) {
        return new ImportWeather.Request(file("date," + rest + ",11\n"), false, Map.of(), Map.of(), Set.of(), true);
    }

    private static ChangePolicy settings(Session asking) {
        return new ChangePolicy(asking, Settings.catalogue());
    }

    private static ChangePolicy.Wanted wanted(String percent) {
        return new ChangePolicy.Wanted("holelocation.levelCapPercent", percent);
    }

    private static DayQuestion today() {
        return DayQuestion.of(MadeDesk.DAY);
    }

    private static ImportRequest map() {
        return new ImportRequest(
                MadeDesk.COURSE,
                ZoneOffset.UTC,
                Optional.of(file(MadeDesk.map(4))),
                Map.of(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                SurveyOptions.asTheFilesSay(),
                false);
    }

    /** Ten paces before the front of a green. */
    static void bunker(Session asking) {
        GroundWish wish = new GroundWish.Another(Hazard.Kind.BUNKER, "-10 L2\n-8 L2\n-8 R2\n-10 R2");
        new DrawGround(asking).keep("3", wish, mapVersion(asking));
    }

    private static long mapVersion(Session asking) {
        return new DrawGround(asking).show("3").version();
    }

    static void plan(Session asking, long seed) {
        new PlanDay(asking, "made").plan(today(), seed, Progress.unheard());
    }

    static void drawnOnTheFirst(Session asking) {
        new KeepDrawn(asking).add(today(), "1", spot(7), usual());
    }

    private static KeepLevelReading level(Session asking) {
        return new KeepLevelReading(asking);
    }

    private static Spot spot(double on) {
        return new Spot.Paced(on, Side.LEFT, 8);
    }

    private static Falls falls() {
        return new Falls(Map.of("front", 1.4));
    }

    private static KeepDrawn.Said usual() {
        return new KeepDrawn.Said(
                PersonsOpinion.Kind.USUAL, Optional.empty(), Optional.of("Ida"), Optional.empty(), Optional.empty());
    }
}
