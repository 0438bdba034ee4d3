package org.cupwright.app.office.green;

import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.Spot;
import org.cupwright.app.desk.entry.typed.EntryPlace;
import org.cupwright.app.desk.plan.HoleWish;
import org.cupwright.app.desk.plan.PlanDay;
import org.cupwright.app.office.visit.Visit;
import org.cupwright.message.Message.Name;
import org.cupwright.message.Problem;
import org.cupwright.units.Paces;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What whoever plans wants of a hole on the day that is shown. */
@Controller
public final class HoleWishController {
    /** Chooses among equal plans, as the commands do. */
    private static final long SEED = 1;

    /** As far as the command that does the same allows, m. */
    private static final double MOST_RADIUS_METRES = 30;

    /**
     * The hole is to be at a spot.
     *
     * @param at the spot, {@code E,N}
     * @param seen the number of the day's plan when it was looked at
     */
    @PostMapping("/green/{hole}/set")
    String set(
            Visit visit,
            @PathVariable String hole,
            @RequestParam String at,
            @RequestParam long seen,
            RedirectAttributes on) {
        return wanted(visit, new HoleWish.Here(hole, EntryPlace.spot(at)), at, seen, on);
    }

    /** @param within paces about the spot in which the hole is not to be */
    @PostMapping("/green/{hole}/keep-off")
    String keepOff(
            Visit visit,
            @PathVariable String hole,
            @RequestParam String at,
            @RequestParam String within,
            @RequestParam long seen,
            RedirectAttributes on) {
        double metres = Paces.toMetres(
                AskedOfGreen.number("within", within), visit.session().speech().paceMetres());
        if (!(metres > 0 && metres <= MOST_RADIUS_METRES)) {
            throw Problem.of("green.within", "within", within, new Name(within));
        }
        Spot about = EntryPlace.spot(at);
        return wanted(visit, new HoleWish.NotHere(hole, about, metres), "", seen, on);
    }

    @PostMapping("/green/{hole}/free")
    String free(Visit visit, @PathVariable String hole, @RequestParam long seen, RedirectAttributes on) {
        return wanted(visit, new HoleWish.Free(hole), "", seen, on);
    }

    private static String wanted(Visit visit, HoleWish wish, String at, long seen, RedirectAttributes on) {
        new PlanDay(visit.session(), visit.version()).plan(visit.question(), wish, seen, SEED, Progress.unheard());
        on.addAttribute("hole", wish.hole());
        on.addAttribute("date", visit.date().toString());
        if (!at.isEmpty()) {
            on.addAttribute("at", at);
        }
        return "redirect:/green/{hole}";
    }
}
