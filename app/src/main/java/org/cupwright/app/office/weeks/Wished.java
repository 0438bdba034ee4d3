package org.cupwright.app.office.weeks;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.HoleChoice;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.plan.ChangeAsked;
import org.cupwright.app.desk.plan.ChangeAsked.OnDay;
import org.cupwright.app.desk.plan.ChangeAsked.Spoiled;
import org.cupwright.app.desk.plan.ChangeAsked.Swap;
import org.cupwright.app.desk.plan.HoleWish;
import org.cupwright.app.desk.plan.PlanChoice;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.Stores;
import org.cupwright.course.MapPoint;

/**
 * What somebody has gathered on the page to be changed. It stands in the page's address, so that the way back and a new
 * look at the page keep it.
 *
 * @param date the first day that is shown
 * @param all in the order in which they were wished
 */
record Wished(LocalDate date, List<Wish> all) {
    private static final String FIELD = "wish";

    /** What stands in an address, or in a form. */
    static Wished of(LocalDate date, Map<String, List<String>> asked) {
        return of(date, asked.getOrDefault(FIELD, List.of()));
    }

    static Wished of(LocalDate date, List<String> texts) {
        return new Wished(date, texts.stream().map(Wish::of).toList());
    }

    /** One more; what it takes the place of is left out. */
    Wished with(Wish wish) {
        List<Wish> more = new ArrayList<>(all);
        more.removeIf(earlier -> earlier.equals(wish) || wish.replaces(earlier));
        more.add(wish);
        return new Wished(date, more);
    }

    Wished without(Wish wish) {
        return new Wished(date, all.stream().filter(one -> !one.equals(wish)).toList());
    }

    boolean isOf(LocalDate day, String hole) {
        return all.stream().anyMatch(wish -> wish.isOf(day, hole));
    }

    public List<String> texts() {
        return all.stream().map(Wish::text).toList();
    }

    /** Of the page. */
    public String address() {
        StringBuilder address = new StringBuilder("/weeks?date=" + date);
        texts().forEach(text -> address.append("&" + FIELD + "=" + URLEncoder.encode(text, StandardCharsets.UTF_8)));
        return address.toString();
    }

    /** As the desk takes it: spots are those of the plans as they are kept. */
    ChangeAsked asked(Session session, Optional<Integer> days) {
        return session.read(stores -> new ChangeAsked(
                all.stream()
                        .flatMap(wish -> single(stores, session, wish).stream())
                        .toList(),
                all.stream()
                        .flatMap(wish -> wish.other().map(other -> new Swap(wish.hole(), wish.on(), other)).stream())
                        .toList(),
                all.stream()
                        .filter(wish -> wish.kind() == Wish.Kind.SPOILED)
                        .map(wish -> new Spoiled(Optional.of(wish.on()), wish.hole()))
                        .toList(),
                days));
    }

    private static Optional<OnDay> single(Stores stores, Session session, Wish wish) {
        Optional<HoleWish> wanted = switch (wish.kind()) {
            case HERE -> Optional.of(new HoleWish.Here(wish.hole(), planned(stores, session, wish)));
            case AWAY ->
                Optional.of(new HoleWish.NotHere(
                        wish.hole(),
                        planned(stores, session, wish),
                        wish.metres().orElseThrow()));
            case FREE -> Optional.of(new HoleWish.Free(wish.hole()));
            case SPOILED, SWAP -> Optional.empty();
        };
        return wanted.map(one -> new OnDay(Optional.of(wish.on()), one));
    }

    private static Spot planned(Stores stores, Session session, Wish wish) {
        String hole = HoleChoice.hole(session.course(stores), wish.hole()).id();
        MapPoint at = PlanChoice.plan(stores, session.course(stores), wish.on())
                .find(hole)
                .orElseThrow(() -> PlanChoice.leftOut(hole, wish.on()))
                .position()
                .judgement()
                .position();
        return new Spot.At(at);
    }
}
