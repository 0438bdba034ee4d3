package org.cupwright.turf.today;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cupwright.cupchange.MadeFacts.cut;
import static org.cupwright.cupchange.MadeFacts.on;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.cupwright.course.MapPoint;
import org.cupwright.cupchange.Area;
import org.cupwright.cupchange.CareWork;
import org.cupwright.cupchange.Fact;
import org.cupwright.cupchange.GroundNote.GroundMarked;
import org.cupwright.cupchange.GroundNote.GroundReason;
import org.cupwright.cupchange.GroundNote.GroundUse;
import org.cupwright.cupchange.Logbook;
import org.cupwright.cupchange.Payload;
import org.cupwright.cupchange.PlugWork.PlugCare;
import org.cupwright.cupchange.PlugWork.PlugLook;
import org.cupwright.cupchange.PlugWork.PlugSeen;
import org.cupwright.cupchange.PlugWork.PlugTended;
import org.cupwright.green.GroundItem;
import org.cupwright.green.GroundItem.Kind;
import org.cupwright.green.GroundOnDay;
import org.cupwright.policy.Policy;
import org.cupwright.testing.MadeWeather;
import org.cupwright.turf.state.TurfFold;
import org.cupwright.turf.state.TurfState;
import org.cupwright.turf.today.WateringItem.Reason;
import org.cupwright.turf.water.WeatherStation;
import org.cupwright.turf.weather.Rain;
import org.cupwright.turf.weather.WeatherDay;
import org.cupwright.turf.weather.WeatherOutlook;
import org.cupwright.turf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

/** The day's lists on invented facts and weather: 1 May was cut at (3,4), since 10 May the hole is at (9,9). */
class TodayTest {
    private static final LocalDate DAY = LocalDate.of(2024, 5, 10);
    private static final WeatherStation SITE = new WeatherStation(48, 300, 10);
    private static final List<String> HOLES = List.of("6", "7", "8");

    private final List<Fact> facts = new ArrayList<>(
            List.of(on("2024-05-01T04:00:00Z", "7", cut(3, 4)), on("2024-05-10T04:00:00Z", "7", cut(9, 9))));
    private Optional<Rain> rainYesterday = Optional.of(Rain.NONE);
    private double highestToday = 20;
    private double windToday = 2;

    private void add(String day, String hole, Payload payload) {
        facts.add(on("2024-05-%sT09:00:00Z".formatted(day), hole, payload));
    }

    private TurfDay turfOn(LocalDate day) {
        List<WeatherDay> weather = new ArrayList<>();
        for (int back = 1; back < 90; back++) {
            WeatherDay past = WeatherDay.of(day.minusDays(back), 25, 15);
            Optional<Rain> rain = back == 1 ? rainYesterday : Optional.of(Rain.NONE);
            weather.add(rain.map(fallen -> MadeWeather.raining(past.day(), 25, 15, fallen.millimetres()))
                    .orElse(past));
        }
        weather.add(MadeWeather.windy(WeatherDay.of(day, highestToday, 15), windToday));
        TurfState state = TurfFold.fold(
                TurfState.empty(ZoneOffset.UTC),
                Logbook.of(facts).facts().stream()
                        .filter(fact -> !LocalDate.ofInstant(fact.happenedAt(), ZoneOffset.UTC)
                                .isAfter(day))
                        .toList());
        return TurfDay.of(state, day, WeatherOutlook.of(WeatherSeries.of(weather)), Policy.defaults());
    }

    private List<Reason> watering(LocalDate day) {
        return new WateringList(turfOn(day), SITE)
                .morning(HOLES).stream().map(WateringItem::reason).toList();
    }

    private List<RecheckItem.Reason> rechecks(LocalDate day) {
        return new RecheckList(turfOn(day))
                .list(HOLES).stream().map(RecheckItem::reason).toList();
    }

    @Test
    void groundOfAComingDayHasTheOldHoleThePlugAndTheHoleInUse() {
        GroundOnDay tomorrow = new ComingGround(turfOn(DAY)).on("7", DAY.plusDays(1));
        List<GroundItem> old = tomorrow.counting(Kind.OLD_HOLE);
        assertThat(old).hasSize(2);
        assertThat(old.get(0).since()).contains(LocalDate.of(2024, 5, 9));
        assertThat(old.get(0).until()).contains(DAY.plusDays(13)); // fourteen days, today the first
        assertThat(old.get(1).until()).isEmpty();
        assertThat(tomorrow.counting(Kind.PLUG))
                .singleElement()
                .satisfies(plug -> assertThat(plug.until()).contains(DAY.plusDays(6)));
        assertThat(tomorrow.lastHoles(4, 28)).containsExactly(new MapPoint(9, 9), new MapPoint(3, 4));
    }

    @Test
    void groundOfTheSameDayIsAsItWasBeforeTheHoleWasCut() {
        GroundOnDay today = new ComingGround(turfOn(DAY)).on("7", DAY);
        assertThat(today.counting(Kind.OLD_HOLE)).hasSize(1);
    }

    @Test
    void restEndsOnItsDay() {
        ComingGround ground = new ComingGround(turfOn(DAY));
        LocalDate last = DAY.plusDays(13);
        assertThat(ground.on("7", last).counting(Kind.OLD_HOLE)).hasSize(2);
        assertThat(ground.on("7", last.plusDays(1)).counting(Kind.OLD_HOLE)).hasSize(1);
        assertThat(new Clocks(turfOn(DAY)).restingOn("7", last)).hasSize(1);
        assertThat(new Clocks(turfOn(DAY)).restingOn("7", last.plusDays(1))).isEmpty();
    }

    @Test
    void holesLeftYearsAgoAreNoneOfTheLastAndRestNoMore() {
        LocalDate yearsLater = DAY.plusYears(3);
        GroundOnDay ground = new ComingGround(turfOn(yearsLater)).on("7", yearsLater);
        assertThat(ground.lastHoles(4, 28)).containsExactly(new MapPoint(9, 9)); // still in use
        assertThat(ground.lastHoles(4, 4 * 366)).containsExactly(new MapPoint(9, 9), new MapPoint(3, 4));
        assertThat(ground.counting(Kind.OLD_HOLE)).hasSize(1); // the hole that is still in use
        assertThat(ground.counting(Kind.PLUG)).isEmpty();
    }

    @Test
    void markedGroundCountsOnItsDaysOnly() {
        add(
                "10",
                "7",
                new GroundMarked(
                        GroundUse.LIGHT_USE,
                        new Area.Around(new MapPoint(5, 5), 2),
                        GroundReason.WEAR,
                        DAY.plusDays(2),
                        Optional.of(DAY.plusDays(4))));
        ComingGround ground = new ComingGround(turfOn(DAY));
        assertThat(ground.on("7", DAY.plusDays(1)).counting(Kind.LIGHT_USE)).isEmpty();
        assertThat(ground.on("7", DAY.plusDays(4)).counting(Kind.LIGHT_USE)).hasSize(1);
        assertThat(ground.on("7", DAY.plusDays(5)).counting(Kind.LIGHT_USE)).isEmpty();
    }

    @Test
    void aFaultyPlugCountsUntilSomebodySeesItMended() {
        add("12", "7", new PlugSeen(new MapPoint(3, 4), PlugLook.HIGH));
        LocalDate monthLater = DAY.plusDays(30);
        assertThat(new ComingGround(turfOn(monthLater)).on("7", monthLater).counting(Kind.PLUG))
                .hasSize(1);
        assertThat(rechecks(monthLater)).containsExactly(RecheckItem.Reason.HIGH);
        add("13", "7", new PlugTended(new MapPoint(3, 4), PlugCare.LIFTED, Optional.empty()));
        assertThat(new ComingGround(turfOn(monthLater)).on("7", monthLater).counting(Kind.PLUG))
                .isEmpty();
    }

    @Test
    void aNewPlugIsAlwaysWateredWhateverFell() {
        rainYesterday = Optional.of(Rain.of(20));
        assertThat(watering(DAY)).containsExactly(Reason.NEW_PLUG);
        add("10", "7", new PlugTended(new MapPoint(3, 4), PlugCare.WATERED, Optional.empty()));
        assertThat(new WateringList(turfOn(DAY), SITE).morning(HOLES))
                .singleElement()
                .satisfies(item -> assertThat(item.done()).isTrue());
    }

    @Test
    void aYoungPlugIsWateredWhenNothingCameAndWhenNobodyKnows() {
        assertThat(watering(DAY.plusDays(2))).containsExactly(Reason.WATER_UNKNOWN); // irrigation not entered
        add("11", "", new CareWork.Irrigated(0));
        assertThat(watering(DAY.plusDays(2))).containsExactly(Reason.NO_WATER_CAME);
        rainYesterday = Optional.empty();
        assertThat(watering(DAY.plusDays(2))).containsExactly(Reason.WATER_UNKNOWN);
        rainYesterday = Optional.of(new Rain(0, true)); // a trace wets nothing
        assertThat(watering(DAY.plusDays(2))).containsExactly(Reason.NO_WATER_CAME);
        rainYesterday = Optional.of(Rain.of(4));
        assertThat(watering(DAY.plusDays(2))).isEmpty();
    }

    @Test
    void irrigationOfTheOneGreenCountsAndOldPlugsAreLeftAlone() {
        add("12", "7", new CareWork.Irrigated(5));
        assertThat(watering(DAY.plusDays(3))).isEmpty();
        assertThat(watering(DAY.plusDays(4))).isEmpty(); // four days old
    }

    @Test
    void aHotDayAsksForAnAfternoonRound() {
        assertThat(new WateringList(turfOn(DAY), SITE).afternoon(HOLES)).isEmpty();
        highestToday = 38;
        assertThat(new WateringList(turfOn(DAY), SITE).afternoon(HOLES))
                .extracting(WateringItem::reason)
                .containsExactly(Reason.HOT);
    }

    @Test
    void plugsAreLookedAtOnceAndAgainWhenTheGuessHasRunOut() {
        assertThat(rechecks(DAY)).isEmpty();
        assertThat(rechecks(DAY.plusDays(1))).containsExactly(RecheckItem.Reason.NEVER_SEEN);
        add("11", "7", new PlugSeen(new MapPoint(3, 4), PlugLook.LEVEL));
        assertThat(rechecks(DAY.plusDays(2))).isEmpty();
        assertThat(rechecks(DAY.plusDays(7))).containsExactly(RecheckItem.Reason.LOOK_FIRST);
        add("17", "7", new PlugSeen(new MapPoint(3, 4), PlugLook.LEVEL)); // still to be seen: it counts on
        assertThat(rechecks(DAY.plusDays(8))).isEmpty();
        assertThat(rechecks(DAY.plusDays(11))).containsExactly(RecheckItem.Reason.LOOK_FIRST);
        assertThat(rechecks(DAY.plusDays(40))).isEmpty();
    }

    @Test
    void diseasedGreensComeLastAndTheCutterIsWashedAfter() {
        add(
                "10",
                "6",
                new GroundMarked(
                        GroundUse.LIGHT_USE,
                        new Area.Around(new MapPoint(5, 5), 2),
                        GroundReason.DISEASE,
                        DAY,
                        Optional.empty()));
        add("10", "6", new PlugSeen(new MapPoint(1, 1), PlugLook.LOW));
        add("10", "8", new PlugSeen(new MapPoint(1, 1), PlugLook.LOW));
        RecheckList list = new RecheckList(turfOn(DAY));
        assertThat(list.hygieneOrder(HOLES)).containsExactly("7", "8", "6");
        assertThat(list.list(HOLES)).extracting(RecheckItem::hole).containsExactly("8", "6");
        assertThat(list.list(HOLES)).extracting(RecheckItem::washAfter).containsExactly(false, true);
    }

    /** A sign for each day from 10 May on. */
    private static String calendar(int days, Predicate<LocalDate> marked) {
        StringBuilder signs = new StringBuilder();
        for (LocalDate day = DAY; day.isBefore(DAY.plusDays(days)); day = day.plusDays(1)) {
            signs.append(marked.test(day) ? '#' : '.');
        }
        return signs.toString();
    }

    private Optional<VisiblePlug> plug(LocalDate day) {
        return new Clocks(turfOn(day)).plugsOn("7", day).stream().findFirst();
    }

    private String counting(int days) {
        return calendar(
                days,
                day -> plug(day).filter(one -> !one.countsUntil().isBefore(day)).isPresent());
    }

    private String lookFirst(int days) {
        return calendar(
                days, day -> plug(day).filter(one -> one.lookFirstOn(day)).isPresent());
    }

    /** Four mornings with water, seven days of the plug, fourteen of rest, and after the guess fourteen to look. */
    @Test
    void theCalendarOfAHoleLeftOnTheTenth() {
        //                            10        20         30
        assertThat(calendar(24, day -> !watering(day).isEmpty())).isEqualTo("####....................");
        assertThat(counting(24)).isEqualTo("#######.................");
        assertThat(calendar(
                        24, day -> !new Clocks(turfOn(day)).restingOn("7", day).isEmpty()))
                .isEqualTo("##############..........");
        assertThat(lookFirst(24)).isEqualTo(".......##############...");
    }

    /** Seen unknit on the day after the guess, the plug counts three days from the look; then a fortnight to look. */
    @Test
    void theCalendarOfAPlugSeenUnknitOnTheSeventeenth() {
        add("17", "7", new PlugSeen(new MapPoint(3, 4), PlugLook.LEVEL));
        assertThat(counting(27)).isEqualTo("#######" + "####" + "................");
        assertThat(lookFirst(27)).isEqualTo("..........." + "##############" + "..");
    }

    /** A look that is over before the guess is does not shorten it. */
    @Test
    void theCalendarOfAPlugSeenUnknitOnTheEleventh() {
        add("11", "7", new PlugSeen(new MapPoint(3, 4), PlugLook.LEVEL));
        assertThat(counting(10)).isEqualTo("#######...");
    }

    @Test
    void aMillimetreWetsWhetherItFellOrWasGiven() {
        add("11", "", new CareWork.Irrigated(0.4));
        rainYesterday = Optional.of(Rain.of(0.6));
        assertThat(watering(DAY.plusDays(2))).isEmpty();
        rainYesterday = Optional.of(Rain.of(0.5));
        assertThat(watering(DAY.plusDays(2))).containsExactly(Reason.NO_WATER_CAME);
    }

    @Test
    void waterOfTheDayItselfCountsAndThatOfTwoDaysAgoDoesNot() {
        add("11", "7", new CareWork.Irrigated(5));
        assertThat(watering(DAY.plusDays(1))).isEmpty();
        assertThat(watering(DAY.plusDays(2))).isEmpty();
        assertThat(watering(DAY.plusDays(3))).containsExactly(Reason.WATER_UNKNOWN);
    }

    @Test
    void aWindyDayAsksForAnAfternoonRoundFromEightMetresPerSecondOn() {
        windToday = 7.9;
        assertThat(new WateringList(turfOn(DAY), SITE).afternoon(HOLES)).isEmpty();
        windToday = 8;
        assertThat(new WateringList(turfOn(DAY), SITE).afternoon(HOLES))
                .singleElement()
                .satisfies(item -> {
                    assertThat(item.reason()).isEqualTo(Reason.WINDY);
                    assertThat(item.hole()).isEqualTo("7");
                    assertThat(item.done()).isFalse();
                });
    }
}
