package org.cupwright.app.field;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Optional;
import java.util.UUID;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.entry.RecordFact;
import org.cupwright.app.desk.entry.SentForm;
import org.cupwright.app.desk.entry.carried.CarriedEntry;
import org.cupwright.app.desk.files.SourceFile;
import org.cupwright.app.desk.paper.ShowDay;
import org.cupwright.app.session.Session;
import org.cupwright.app.storage.Photo;
import org.cupwright.app.visit.PhoneInUse;
import org.cupwright.app.visit.Visit;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Controller;
import org.springframework.ui.Model;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import tools.jackson.databind.node.ObjectNode;

/** What the changer's page loads, and what it sends. */
@Controller
final class RoundController {
    private static final String WORKER = PageFiles.worker();

    private final PhoneInUse phones;

    RoundController(PhoneInUse phones) {
        this.phones = phones;
    }

    /** The page: the same for every day and everybody, so that a phone may keep it. */
    @GetMapping("/round")
    String page(Visit visit, Model model) {
        model.addAttribute("words", new RoundWords(visit.texts()).inPage());
        model.addAttribute("language", visit.texts().language());
        model.addAttribute("title", visit.texts().say("round.title"));
        return "round";
    }

    /** Keeps the page on the phone. */
    @GetMapping("/round/worker.js")
    ResponseEntity<String> worker() {
        return ResponseEntity.ok()
                .contentType(MediaType.valueOf("text/javascript"))
                .header("Service-Worker-Allowed", "/round") // the page itself, too, and not what lies below it alone
                .cacheControl(CacheControl.noCache())
                .body(WORKER);
    }

    /** Whoever was signed out comes by here: the page itself lies on the phone, and leads nobody to the doors. */
    @GetMapping("/round/again")
    String again() {
        return "redirect:/round";
    }

    /** The day to carry; and the mark by which what is sent later is known to be ours. */
    @GetMapping("/round/day")
    ResponseEntity<String> day(Visit visit, HttpServletRequest request, CsrfToken token) {
        ShowDay.Answer answer = new ShowDay(visit.session()).of(visit.question(), Progress.unheard());
        ObjectNode day = new CarriedDay(visit, visit.session().now()).of(answer);
        mark(token, day);
        PhoneController.tell(phones, request, visit, day);
        day.set("words", new RoundWords(visit.texts()).all());
        day.put("language", visit.texts().language());
        return json(200, day);
    }

    /** Who is signed in, what the office's clock shows, and the mark for what is sent. */
    @GetMapping("/round/who")
    ResponseEntity<String> who(Visit visit, HttpServletRequest request, CsrfToken token) {
        ObjectNode who = Json.object();
        who.put("person", visit.session().person().name());
        who.put("now", visit.session().now().toString());
        mark(token, who);
        PhoneController.tell(phones, request, visit, who);
        return json(200, who);
    }

    /**
     * Keeps an entry once, however often it is sent. What is answered is on the disk.
     *
     * @param id the entry's own, made where it was written down
     */
    @PostMapping("/round/entries/{id}")
    ResponseEntity<String> take(
            Visit visit,
            @PathVariable UUID id,
            @RequestParam String entry,
            @RequestParam(required = false) MultipartFile photo) {
        CarriedEntry carried = CarriedEntry.read(entry);
        carried.checkWrittenBy(visit.session().person());
        Optional<Photo> taken = photo(carried, photo);
        Session theirs = carried.recordedBy(visit.session());
        Optional<RecordFact.Answer> kept =
                new SentForm(theirs, id).once(session -> new RecordFact(session).record(carried.entry(taken)));
        ObjectNode answer = Json.object();
        answer.put("id", id.toString());
        answer.put("kept", kept.isPresent() ? "now" : "before");
        var remarks = answer.putArray("remarks");
        kept.ifPresent(
                now -> now.remarks().forEach(remark -> remarks.add(visit.texts().say(remark))));
        return json(200, answer);
    }

    private static Optional<Photo> photo(CarriedEntry carried, MultipartFile file) {
        return Optional.ofNullable(file)
                .filter(sent -> !sent.isEmpty())
                .map(sent -> carried.photo(new SourceFile("photo", sent::getInputStream)));
    }

    static void mark(CsrfToken token, ObjectNode out) {
        if (token != null) {
            out.put("markName", token.getHeaderName());
            out.put("mark", token.getToken());
        }
    }

    static ResponseEntity<String> json(int status, ObjectNode body) {
        return ResponseEntity.status(status)
                .contentType(MediaType.APPLICATION_JSON)
                .cacheControl(CacheControl.noStore())
                .body(Json.document(body));
    }
}
