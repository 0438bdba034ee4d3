package org.cupwright.app.office.begin;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cupwright.app.desk.begin.BeginCourse;
import org.cupwright.app.desk.begin.HazardStep;
import org.cupwright.app.desk.begin.PictureFrame;
import org.cupwright.app.desk.begin.PictureStep;
import org.cupwright.app.storage.SettingUp;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.app.storage.SettingUp.Known;
import org.cupwright.app.storage.SettingUp.PictureOnGround;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.HeadingWords;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.Hazard;
import org.cupwright.course.MapPoint;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** Second step, by an aerial picture. The picture itself stays in the browser. */
@Controller
public final class PictureController {
    private static final String ADDRESS = "/begin/greens/picture";

    @GetMapping(ADDRESS)
    ModelAndView picture(Visit visit, @RequestParam(defaultValue = "green") String kind) {
        Evening evening = new Evening(visit, Step.GREENS);
        SettingUp stands = new BeginCourse(visit.session()).stands();
        Map<String, String> values = values(stands);
        values.put(DrawnKinds.FIELD, kind);
        return page(evening, stands, evening.form(values));
    }

    /** Keeps how the picture lies on the ground. */
    @PostMapping(ADDRESS)
    ModelAndView lay(Visit visit, @RequestParam Map<String, String> typed) {
        Evening evening = new Evening(visit, Step.GREENS);
        SettingUp stands = new BeginCourse(visit.session()).stands();
        return evening.keep(
                typed,
                () -> new PictureStep(visit.session()).keepPicture(typed),
                ADDRESS,
                form -> page(evening, stands, form));
    }

    /** Keeps a green. */
    @PostMapping("/begin/greens/traced")
    ModelAndView trace(Visit visit, @RequestParam Map<String, String> typed, RedirectAttributes next) {
        Evening evening = new Evening(visit, Step.GREENS);
        SettingUp stands = new BeginCourse(visit.session()).stands();
        Map<String, String> all = new HashMap<>(values(stands));
        all.putAll(typed);
        return evening.keep(
                all,
                () -> keep(visit, typed, next),
                ADDRESS + "?kind=" + DrawnKinds.name(typed),
                form -> page(evening, stands, form));
    }

    private static void keep(Visit visit, Map<String, String> typed, RedirectAttributes next) {
        Optional<Hazard.Kind> hazard = DrawnKinds.hazard(typed);
        if (hazard.isPresent()) {
            DrawnKinds.kept(visit, hazard.get(), new HazardStep(visit.session()).onPicture(hazard.get(), typed), next);
        } else {
            int number = new PictureStep(visit.session()).keepGreen(new HeadingWords(visit.texts()).inDegrees(typed));
            kept(visit, number, next);
        }
    }

    /** What was kept of a green: its size and its drawing show whether the measures were right. */
    static void kept(Visit visit, int number, RedirectAttributes next) {
        Texts texts = visit.texts();
        BegunGreen green =
                new BeginCourse(visit.session()).stands().find(number).orElseThrow();
        String name = green.named() ? green.hole().id() : "#" + number;
        String size = texts.area(green.hole().green().areaSquareMetres());
        next.addFlashAttribute("said", List.of(texts.say("begin.kept", name, size)));
        next.addFlashAttribute("drawn", new GreensView(texts).drawn(green));
    }

    private static ModelAndView page(Evening evening, SettingUp stands, Form form) {
        Texts texts = evening.visit().texts();
        Optional<PictureFrame> frame = stands.picture().map(PictureFrame::of);
        return evening.page("begin-picture", form)
                .addObject("points", PictureStep.POINTS)
                .addObject("kinds", DrawnKinds.ALL)
                .addObject("winds", new HeadingWords(texts).all())
                .addObject("count", stands.greens().size())
                .addObject("rings", frame.map(lies -> rings(stands, lies)).orElse(""))
                .addObject(
                        "lies",
                        frame.map(lies -> texts.say(
                                        "begin.picture.lies",
                                        texts.number(lies.metresPerPixel(), 2),
                                        Math.round(lies.up().degrees()) % 360))
                                .orElse(""));
    }

    /** Greens, bunkers and water that are there, as corners of the picture: {@code x,y x,y;x,y …}. */
    private static String rings(SettingUp stands, PictureFrame frame) {
        return stands.greens().stream()
                .filter(BegunGreen::placed)
                .flatMap(green -> Stream.concat(
                        Stream.of(green.hole().green().polygon()),
                        green.hole().hazards().stream().map(Hazard::area)))
                .map(ground -> Stream.of(ground.getExteriorRing().getCoordinates())
                        .map(corner -> frame.pixel(MapPoint.of(corner)))
                        .map(pixel -> String.format(Locale.ROOT, "%.1f,%.1f", pixel.right(), pixel.down()))
                        .collect(Collectors.joining(" ")))
                .collect(Collectors.joining(";"));
    }

    private static Map<String, String> values(SettingUp stands) {
        Map<String, String> values = new HashMap<>();
        stands.picture().ifPresent(picture -> lying(picture, values));
        return values;
    }

    private static void lying(PictureOnGround picture, Map<String, String> values) {
        values.put("width", Integer.toString(picture.widthPixels()));
        values.put("height", Integer.toString(picture.heightPixels()));
        known("first", picture.first(), values);
        known("second", picture.second(), values);
    }

    private static void known(String point, Known known, Map<String, String> values) {
        values.put(point + "Right", decimal(known.right(), 1));
        values.put(point + "Down", decimal(known.down(), 1));
        values.put(point + "East", decimal(known.at().east(), 2));
        values.put(point + "North", decimal(known.at().north(), 2));
    }

    private static String decimal(double number, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", number);
    }
}
