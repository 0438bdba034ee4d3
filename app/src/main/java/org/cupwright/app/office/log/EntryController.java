package org.cupwright.app.office.log;

import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.desk.entry.CorrectFact;
import org.cupwright.app.desk.entry.Entry;
import org.cupwright.app.desk.entry.RecordFact;
import org.cupwright.app.desk.entry.SeeToOdd;
import org.cupwright.app.desk.entry.SentForm;
import org.cupwright.app.desk.entry.typed.EntryForm;
import org.cupwright.app.desk.entry.typed.TypedEntry;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.visit.Visit;
import org.cupwright.message.Problem;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributes;

/** What is written into the logbook by its page. */
@Controller
public final class EntryController {
    /**
     * Keeps an entry, or says at its fields why not.
     *
     * @param form the form's own id
     */
    @PostMapping("/log/add")
    ModelAndView add(
            Visit visit,
            @RequestParam(name = "about") String about,
            @RequestParam UUID form,
            @RequestParam Map<String, String> fields,
            @RequestParam(name = Field.PART + Photo.PART, required = false) MultipartFile photo,
            RedirectAttributes flash) {
        Chosen chosen = Chosen.of(about);
        Typed typed = Typed.of(fields, visit.texts());
        Wrong wrong = Wrong.with(chosen, typed, visit.texts());
        if (wrong.isNothing()) {
            try {
                Optional<Photo> taken = photo(chosen.form(), photo);
                Entry entry = entry(visit, chosen, typed, taken);
                Told told = new Told(visit.texts(), flash);
                new SentForm(visit.session(), form)
                        .once(session -> new RecordFact(session).record(entry))
                        .ifPresentOrElse(told::kept, told::sentBefore);
                return back(visit, "&do=" + chosen.address());
            } catch (Problem problem) {
                wrong = Wrong.of(problem, chosen.form(), typed.parts(chosen.form()), visit.texts());
            }
        }
        Wrong found = wrong;
        return new LogPage(visit, HttpStatus.UNPROCESSABLE_CONTENT)
                .with(course -> new EntryFormView(visit, course).adding(chosen, typed, found, form), chosen.address());
    }

    private static Entry entry(Visit visit, Chosen chosen, Typed typed, Optional<Photo> photo) {
        return new Entry(
                typed.hole().stream().toList(),
                chosen.asPlanned(),
                Optional.of(visit.date()),
                typed.says(chosen, photo),
                photo,
                typed.sure());
    }

    private static Optional<Photo> photo(EntryForm form, MultipartFile file) {
        return Optional.ofNullable(file)
                .filter(sent -> !sent.isEmpty())
                .map(sent -> new SourceFile(
                        Optional.ofNullable(sent.getOriginalFilename()).orElse(""), sent::getInputStream))
                .map(sent -> TypedEntry.photo(form, sent));
    }

    /** Puts an entry right, or says at its fields why not. */
    @PostMapping("/log/correct")
    ModelAndView correct(
            Visit visit,
            @RequestParam(name = "about") String about,
            @RequestParam UUID form,
            @RequestParam Map<String, String> fields,
            RedirectAttributes flash) {
        CorrectFact.Standing standing = new CorrectFact(visit.session()).standing(about);
        EntryForm kind = EntryForm.ofKind(standing.was().payload().kind());
        Typed typed = Typed.of(fields, visit.texts());
        Wrong wrong = Wrong.with(kind, typed, visit.texts());
        if (wrong.isNothing()) {
            try {
                CorrectFact.Change change = change(about, kind, typed);
                Told told = new Told(visit.texts(), flash);
                new SentForm(visit.session(), form)
                        .once(session -> new CorrectFact(session).correct(change))
                        .ifPresentOrElse(told::corrected, told::sentBefore);
                return back(visit, "");
            } catch (Problem problem) {
                wrong = Wrong.of(problem, kind, typed.changed(kind), visit.texts());
            }
        }
        Wrong found = wrong;
        return new LogPage(visit, HttpStatus.UNPROCESSABLE_CONTENT)
                .with(course -> new EntryFormView(visit, course).correcting(standing, about, typed, found, form), "");
    }

    private static CorrectFact.Change change(String about, EntryForm kind, Typed typed) {
        return new CorrectFact.Change(
                about,
                typed.hole().filter(hole -> !hole.equals(typed.text(Field.WAS + Typed.HOLE))),
                TypedEntry.change(typed.changed(kind), typed.spot(), typed.radiusMetres()),
                typed.sure());
    }

    @PostMapping("/log/withdraw")
    ModelAndView withdraw(Visit visit, @RequestParam String about, @RequestParam UUID form, RedirectAttributes flash) {
        Told told = new Told(visit.texts(), flash);
        new SentForm(visit.session(), form)
                .once(session -> new CorrectFact(session).withdraw(about))
                .ifPresentOrElse(told::corrected, told::sentBefore);
        return back(visit, "");
    }

    @PostMapping("/log/seen")
    ModelAndView seen(Visit visit, @RequestParam String about, @RequestParam UUID form, RedirectAttributes flash) {
        Told told = new Told(visit.texts(), flash);
        new SentForm(visit.session(), form)
                .once(session -> new SeeToOdd(session).seen(about))
                .ifPresentOrElse(told::kept, told::sentBefore);
        return back(visit, "");
    }

    private static ModelAndView back(Visit visit, String more) {
        return new ModelAndView("redirect:/log?date=" + visit.date() + more);
    }
}
