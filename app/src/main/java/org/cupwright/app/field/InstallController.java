package org.cupwright.app.field;

import java.time.Duration;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.cupwright.app.answers.json.Json;
import org.cupwright.app.texts.Door;
import org.cupwright.app.texts.Texts;
import org.cupwright.units.Paces;
import org.cupwright.units.UnitSystem;
import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** What a telephone asks for to put the page among its own programs; it asks as nobody, since it brings no cookie. */
@Controller
final class InstallController {
    private static final CacheControl A_DAY = CacheControl.maxAge(Duration.ofDays(1));

    private final Map<PageIcon, byte[]> drawn = new ConcurrentHashMap<>();

    /** @param language of the page that names it; where there are no words in it, English */
    @GetMapping("/round/manifest/{language}")
    ResponseEntity<String> manifest(@PathVariable String language) {
        Texts texts = words(language);
        return ResponseEntity.ok()
                .contentType(MediaType.valueOf("application/manifest+json"))
                .cacheControl(CacheControl.noCache())
                .body(Json.document(new Manifest(texts).document()));
    }

    private static Texts words(String language) {
        return Texts.find(language, Door.PAGES, UnitSystem.PACES, Paces.STANDARD_METRES)
                .or(() -> Texts.find("en", Door.PAGES, UnitSystem.PACES, Paces.STANDARD_METRES))
                .orElseThrow();
    }

    @GetMapping("/round/icon/{icon}")
    ResponseEntity<byte[]> icon(@PathVariable PageIcon icon) {
        return ResponseEntity.ok()
                .contentType(MediaType.IMAGE_PNG)
                .cacheControl(A_DAY)
                .body(drawn.computeIfAbsent(icon, PageIcon::png));
    }
}
