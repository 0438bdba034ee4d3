package org.cupwright.app.office.begin;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.desk.begin.BeginCourse;
import org.cupwright.app.desk.begin.HazardStep;
import org.cupwright.app.storage.SettingUp.BegunGreen;
import org.cupwright.app.texts.Texts;
import org.cupwright.app.visit.Visit;
import org.cupwright.course.Hazard;
import org.cupwright.policy.EnumNames;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What is drawn: a green, or a bunker or water beside one. */
final class DrawnKinds {
    static final String FIELD = "kind";
    static final String GREEN = "green";
    static final List<String> ALL = List.of(GREEN, "bunker", "water");

    private DrawnKinds() {}

    /** The kind that was chosen; what is none of them is a green. */
    static String name(Map<String, String> typed) {
        return Optional.ofNullable(typed.get(FIELD)).filter(ALL::contains).orElse(GREEN);
    }

    /** The kind of hazard; empty for a green. */
    static Optional<Hazard.Kind> hazard(Map<String, String> typed) {
        return EnumNames.find(Hazard.Kind.class, name(typed));
    }

    /** Says what was kept of a hazard, and shows the green with it. */
    static void kept(Visit visit, Hazard.Kind kind, HazardStep.Kept kept, RedirectAttributes next) {
        Texts texts = visit.texts();
        BegunGreen green =
                new BeginCourse(visit.session()).stands().find(kept.green()).orElseThrow();
        String hole = green.named() ? green.hole().id() : "#" + green.number();
        String size = texts.area(kept.squareMetres());
        next.addFlashAttribute("said", List.of(texts.say("begin.kept." + EnumNames.lowerCamel(kind), hole, size)));
        next.addFlashAttribute("drawn", new GreensView(texts).drawn(green));
    }
}
