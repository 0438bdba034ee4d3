package org.cupwright.app.office.today;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.cupwright.app.desk.round.GiveHoles;
import org.cupwright.app.desk.round.RoundWish;
import org.cupwright.app.desk.round.RoundWish.Give;
import org.cupwright.app.visit.Visit;
import org.cupwright.round.StartType;
import org.springframework.stereotype.Controller;
import org.springframework.util.MultiValueMap;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;

/** Takes from the page of the day how play begins and who cuts which holes. */
@Controller
public final class WhoCutsController {
    private static final String PERSON = "person";
    private static final String HOLES = "holes";

    /**
     * Says all of it anew.
     *
     * @param seen the number of what stood there when it was looked at; 0: nothing was said of the day
     * @param lines of people, each with the holes beside it; what has commas in it is not taken apart
     */
    @PostMapping("/who-cuts")
    String set(
            Visit visit,
            @RequestParam long seen,
            @RequestParam StartType start,
            @RequestParam(defaultValue = "") String first,
            @RequestParam(defaultValue = "0") int frost,
            @RequestParam MultiValueMap<String, String> lines) {
        RoundWish whole =
                new RoundWish(Optional.of(start), Optional.of(first), OptionalInt.of(frost), people(lines), List.of());
        new GiveHoles(visit.session()).set(visit.date(), seen, whole);
        return "redirect:/?date=" + visit.date();
    }

    private static List<Give> people(MultiValueMap<String, String> lines) {
        List<String> persons = lines.getOrDefault(PERSON, List.of());
        List<String> holes = lines.getOrDefault(HOLES, List.of());
        List<Give> people = new ArrayList<>();
        for (int i = 0; i < Math.min(persons.size(), holes.size()); i++) {
            if (!persons.get(i).isBlank() || !holes.get(i).isBlank()) {
                people.add(new Give(persons.get(i), holes.get(i)));
            }
        }
        return people;
    }
}
