package org.cupwright.app.field;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.session.Right;
import org.cupwright.app.visit.PhoneInUse;
import org.cupwright.app.visit.PhoneInUse.Tried;
import org.cupwright.app.visit.SignedIn;
import org.cupwright.app.visit.Visit;
import org.cupwright.policy.EnumNames;
import org.springframework.http.ResponseEntity;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Who writes on a phone that several share. */
@Controller
final class PhoneController {
    private final PhoneInUse phones;

    PhoneController(PhoneInUse phones) {
        this.phones = phones;
    }

    /** What everybody may know on this phone, whoever is signed in there: its names, and the mark for what is sent. */
    @GetMapping("/round/phone")
    ResponseEntity<String> phone(HttpServletRequest request, CsrfToken token) {
        ObjectNode phone = Json.object();
        tell(phones, request, phone);
        SignedIn.of(request).ifPresent(person -> phone.put("person", person.name()));
        RoundController.mark(token, phone);
        return RoundController.json(200, phone);
    }

    /** Signs in whoever knows the PIN of a name. */
    @PostMapping("/round/pin")
    ResponseEntity<String> pin(
            HttpServletRequest request,
            HttpServletResponse response,
            @RequestParam String name,
            @RequestParam String pin) {
        Tried tried = phones.signIn(request, response, name, pin);
        ObjectNode answer = Json.object();
        answer.put("came", EnumNames.lowerCamel(tried.came()));
        answer.put("seconds", tried.seconds());
        return RoundController.json(200, answer);
    }

    /** Makes this phone a shared one; from then on it is nobody's. */
    @PostMapping("/round/share")
    String share(Visit visit, HttpServletRequest request, HttpServletResponse response) {
        phones.share(request, response, visit.session());
        return "redirect:/round";
    }

    /** Whether the phone is a shared one, and who may be chosen on it. */
    static void tell(PhoneInUse phones, HttpServletRequest request, ObjectNode out) {
        var names = phones.names(request);
        out.put("shared", names.isPresent());
        ArrayNode listed = out.putArray("names");
        names.ifPresent(all -> all.forEach(listed::add));
    }

    /** The same for somebody who is signed in, who may perhaps make it one. */
    static void tell(PhoneInUse phones, HttpServletRequest request, Visit visit, ObjectNode out) {
        tell(phones, request, out);
        boolean account = visit.session().person().id().isPresent();
        out.put("mayShare", account && visit.may(Right.PEOPLE) && PhoneInUse.mayBeKept(request));
    }
}
