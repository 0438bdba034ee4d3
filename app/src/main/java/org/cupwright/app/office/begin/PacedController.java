package org.cupwright.app.office.begin;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cupwright.app.desk.begin.BeginCourse;
import org.cupwright.app.desk.begin.PacedStep;
import org.cupwright.app.desk.begin.PictureStep;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.app.storage.SettingUp.Measure;
import org.cupwright.app.storage.SettingUp.Paced;
import org.cupwright.app.visit.HeadingWords;
import org.cupwright.app.visit.Visit;
import org.cupwright.policy.EnumNames;
import org.cupwright.units.UnitSystem;
import org.cupwright.units.WrittenNumber;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Second step, by measures that were paced on the green. */
@Controller
public final class PacedController {
    private static final String ADDRESS = "/begin/greens/paced";

    /**
     * The table of measures.
     *
     * @param green the green to be measured anew; 0 for another one
     */
    @GetMapping(ADDRESS)
    ModelAndView paced(Visit visit, @RequestParam(defaultValue = "0") int green) {
        Evening evening = new Evening(visit, Step.GREENS);
        SettingUp stands = new BeginCourse(visit.session()).stands();
        Optional<BegunGreen> known =
                stands.find(green).filter(one -> one.paced().isPresent());
        Map<String, String> values = known.map(PacedController::values).orElseGet(() -> fresh(stands, visit));
        return page(evening, known.map(BegunGreen::number).orElse(0), evening.form(values));
    }

    /** Keeps a green. */
    @PostMapping(ADDRESS)
    ModelAndView keep(
            Visit visit,
            @RequestParam(defaultValue = "0") int green,
            @RequestParam Map<String, String> typed,
            RedirectAttributes next) {
        Evening evening = new Evening(visit, Step.GREENS);
        return evening.keep(
                typed,
                () -> {
                    int number = new PacedStep(visit.session())
                            .keep(
                                    green,
                                    new HeadingWords(visit.texts()).inDegrees(typed),
                                    visit.session().speech().paceMetres());
                    PictureController.kept(visit, number, next);
                },
                green > 0 ? Step.GREENS.address() : ADDRESS,
                form -> page(evening, green, form));
    }

    private static ModelAndView page(Evening evening, int green, Form form) {
        return evening.page("begin-paced", form)
                .addObject("green", green)
                .addObject(
                        "rows", IntStream.rangeClosed(1, PacedStep.ROWS).boxed().toList())
                .addObject(
                        "units",
                        Stream.of(Measure.values()).map(EnumNames::lowerCamel).toList())
                .addObject(
                        "pace",
                        evening.visit()
                                .texts()
                                .number(evening.visit().session().speech().paceMetres(), 2))
                .addObject("winds", new HeadingWords(evening.visit().texts()).all());
    }

    /** The next hole that no green has, in the unit of the one before. */
    private static Map<String, String> fresh(SettingUp stands, Visit visit) {
        Measure usual = visit.session().speech().units() == UnitSystem.METRIC ? Measure.METRES : Measure.PACES;
        Measure unit = stands.greens().stream()
                .flatMap(green -> green.paced().stream())
                .map(Paced::unit)
                .reduce((one, later) -> later)
                .orElse(usual);
        List<String> taken = stands.ofHoles().stream()
                .filter(BegunGreen::named)
                .map(green -> green.hole().id())
                .toList();
        String hole = IntStream.iterate(1, number -> number + 1)
                .mapToObj(Integer::toString)
                .filter(name -> !taken.contains(name))
                .findFirst()
                .orElseThrow();
        return Map.of(PacedStep.UNIT, EnumNames.lowerCamel(unit), PictureStep.HOLE, hole);
    }

    private static Map<String, String> values(BegunGreen green) {
        Paced paced = green.paced().orElseThrow();
        Map<String, String> values = new HashMap<>();
        values.put(PictureStep.HOLE, green.named() ? green.hole().id() : "");
        values.put(PictureStep.PLAY, GreensView.play(green));
        values.put(PacedStep.UNIT, EnumNames.lowerCamel(paced.unit()));
        values.put(PacedStep.LENGTH, WrittenNumber.of(paced.length()));
        paced.front().ifPresent(front -> {
            values.put(PacedStep.EAST, String.format(Locale.ROOT, "%.2f", front.east()));
            values.put(PacedStep.NORTH, String.format(Locale.ROOT, "%.2f", front.north()));
        });
        for (int i = 0; i < paced.rows().size(); i++) {
            values.put(
                    PacedStep.ON + (i + 1), WrittenNumber.of(paced.rows().get(i).on()));
            values.put(
                    PacedStep.LEFT + (i + 1),
                    WrittenNumber.of(paced.rows().get(i).left()));
            values.put(
                    PacedStep.RIGHT + (i + 1),
                    WrittenNumber.of(paced.rows().get(i).right()));
        }
        return values;
    }
}
