package org.cupwright.app.office.green;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Optional;
import org.cupwright.app.answers.Lines;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.day.DayQuestion;
import org.cupwright.app.desk.entry.typed.EntryPlace;
import org.cupwright.app.desk.plan.HoleWish;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.desk.plan.ShowHole;
import org.cupwright.app.office.work.Piece.Way;
import org.cupwright.app.office.work.Works;
import org.cupwright.app.visit.Visit;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** What whoever plans wants of a hole on a day. */
@Controller
public final class HoleWishController {
    /** Chooses among equal plans, as the commands do. */
    private static final long SEED = 1;

    private final Works works;

    public HoleWishController(Works works) {
        this.works = works;
    }

    /**
     * The hole is to be at a spot.
     *
     * @param at the spot, {@code E,N}
     * @param on the day for which that is meant, with the number of its plan when it was looked at
     */
    @PostMapping("/green/{hole}/set")
    String set(Visit visit, @PathVariable String hole, @RequestParam String at, @RequestParam String on) {
        ForDay day = ForDay.of(on, visit.today());
        HoleWish here = new HoleWish.Here(hole, spot(visit, hole, day.date(), at));
        return wanted(visit, here, day, Optional.of(at));
    }

    /** The spot as it is given in addresses is a little off: what is planned there is meant as it is planned. */
    private static Spot spot(Visit visit, String hole, LocalDate date, String at) {
        return new ShowHole(visit.session())
                .of(DayQuestion.of(date), hole)
                .spot()
                .filter(planned -> AskedOfGreen.at(planned).equals(at.strip()))
                .<Spot>map(Spot.At::new)
                .orElseGet(() -> EntryPlace.spot(at));
    }

    /** @param within how far about the spot the hole is not to be, in the units of the course */
    @PostMapping("/green/{hole}/keep-off")
    String keepOff(
            Visit visit,
            @PathVariable String hole,
            @RequestParam String at,
            @RequestParam String within,
            @RequestParam long seen) {
        double metres = visit.unit().radiusMetres(within);
        HoleWish off = new HoleWish.NotHere(hole, EntryPlace.spot(at), metres);
        return wanted(visit, off, new ForDay(visit.date(), seen), Optional.empty());
    }

    @PostMapping("/green/{hole}/free")
    String free(Visit visit, @PathVariable String hole, @RequestParam long seen) {
        return wanted(visit, new HoleWish.Free(hole), new ForDay(visit.date(), seen), Optional.empty());
    }

    private String wanted(Visit visit, HoleWish wish, ForDay day, Optional<String> at) {
        String green = "/green/" + URLEncoder.encode(wish.hole(), StandardCharsets.UTF_8) + "?date=";
        String spot = at.map(place -> "&at=" + URLEncoder.encode(place, StandardCharsets.UTF_8))
                .orElse("");
        Way way = new Way(green + day.date() + spot, green + visit.date() + spot);
        String title =
                visit.texts().say("green.work.wish", wish.hole(), visit.texts().weekday(day.date()));
        return "redirect:"
                + works.soon(visit, title, way, (session, progress) -> {
                    new PlanDay(session, visit.version())
                            .plan(DayQuestion.of(day.date()), wish, day.seen(), SEED, progress);
                    return new Lines(visit.texts()).say("green.work.wish.done");
                });
    }
}
