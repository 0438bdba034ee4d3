package org.cupwright.app.office.begin;

import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.begin.BeginCourse;
import org.cupwright.app.desk.begin.PlaceStep;
import org.cupwright.app.desk.policy.DeskPolicy;
import org.cupwright.app.session.Right;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.Place;
import org.cupwright.app.visit.Visit;
import org.cupwright.policy.EnumNames;
import org.cupwright.units.UnitSystem;
import org.cupwright.units.WrittenNumber;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;

/** First step: name and place. */
@Controller
public final class PlaceController {
    /** Leads to where one left off. */
    @GetMapping("/begin")
    String begin(Visit visit) {
        BeginCourse begin = new BeginCourse(visit.session());
        Optional<SettingUp> stands = begin.find();
        if (!begin.isOpen() && stands.isEmpty()) {
            return "redirect:/"; // there is a course that came otherwise
        }
        return "redirect:" + Step.next(stands).address();
    }

    @GetMapping("/begin/place")
    ModelAndView place(Visit visit) {
        new BeginCourse(visit.session()).checkOpen();
        Evening evening = new Evening(visit, Step.PLACE);
        return page(evening, evening.form(values(evening)));
    }

    @PostMapping("/begin/place")
    ModelAndView keep(Visit visit, @RequestParam Map<String, String> typed) {
        Evening evening = new Evening(visit, Step.PLACE);
        return evening.keep(
                typed,
                () -> new PlaceStep(visit.session()).keep(typed),
                Step.GREENS.address(),
                form -> page(evening, form));
    }

    private static ModelAndView page(Evening evening, Form form) {
        return evening.page("begin-place", form)
                .addObject(
                        "zones", ZoneId.getAvailableZoneIds().stream().sorted().toList())
                .addObject("languages", DeskPolicy.LANGUAGES)
                .addObject(
                        "units",
                        List.of(UnitSystem.values()).stream()
                                .map(EnumNames::lowerCamel)
                                .toList())
                .addObject("maySet", evening.visit().may(Right.SET));
    }

    /** As it was kept; at first the zone of this machine and nothing else. */
    private static Map<String, String> values(Evening evening) {
        Visit visit = evening.visit();
        Map<String, String> values = new HashMap<>(Map.of(
                PlaceStep.ZONE,
                visit.session().clock().getZone().getId(),
                DeskPolicy.LANGUAGE.key(),
                visit.texts().language(),
                DeskPolicy.UNITS.key(),
                EnumNames.lowerCamel(visit.session().speech().units())));
        Optional<Place> kept = evening.stands().map(SettingUp::place);
        kept.ifPresent(place -> values.putAll(Map.of(
                PlaceStep.NAME,
                place.name(),
                PlaceStep.ID,
                place.id(),
                PlaceStep.ZONE,
                place.zone().getId(),
                PlaceStep.LONGITUDE,
                WrittenNumber.of(place.longitudeDegrees()),
                PlaceStep.LATITUDE,
                WrittenNumber.of(place.latitudeDegrees()))));
        return values;
    }
}
