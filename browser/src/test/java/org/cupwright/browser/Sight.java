package org.cupwright.browser;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import java.util.List;
import java.util.function.BiFunction;

/**
 * Something to look at that has no address of its own, or that is a refusal.
 *
 * @param name what it is called
 * @param status what the office answers with
 * @param arrive leads there, and gives the answer
 */
record Sight(String name, int status, BiFunction<Workplace, Page, Response> arrive) {
    private static final int FOUND = 200;
    private static final int WRONG = 400;
    private static final int NOT_THERE = 404;
    private static final int NOT_TAKEN = 422;

    static final List<Sight> ALL = List.of(
            at("no such address", NOT_THERE, "/nowhere"),
            at("no such paper", WRONG, "/paper/7"),
            at("a sheet that is not open", NOT_THERE, "/sheet/wrenfold-moor"),
            at("no such work", NOT_THERE, "/work/00000000-0000-0000-0000-000000000000"),
            at("no such hole", NOT_THERE, "/green/99"),
            at("no such day", NOT_TAKEN, "/?date=someday"),
            at("a first evening where a course is", NOT_TAKEN, "/begin/place"),
            new Sight("a code for somebody", FOUND, Sight::code),
            new Sight("a name that is not erased", NOT_TAKEN, Sight::erasing),
            new Sight("an entry with mistakes", NOT_TAKEN, Sight::entry),
            new Sight("a setting that is refused", NOT_TAKEN, Sight::setting),
            new Sight("a file that was read", FOUND, Sight::file),
            new Sight("a file that cannot be read", FOUND, Sight::badFile));

    private static Sight at(String name, int status, String path) {
        return new Sight(name, status, (work, page) -> page.navigate(work.at(path)));
    }

    private static Response sent(Page page, String button) {
        return page.waitForNavigation(() -> page.locator(button).click());
    }

    private static Response code(Workplace work, Page page) {
        page.navigate(work.at("/people"));
        page.locator("#inviteName").fill("Reed Looked At");
        return sent(page, "form[action='/people/invite'] button");
    }

    private static Response erasing(Workplace work, Page page) {
        page.navigate(work.at("/people"));
        page.locator(".rows summary").first().click();
        page.locator("#erase0").fill("Somebody Else");
        return sent(page, "form:has(#erase0) button");
    }

    private static Response entry(Workplace work, Page page) {
        page.navigate(work.at("/log?do=closed"));
        page.locator("#f-on").fill("twelve");
        return sent(page, "form.entry button.main");
    }

    private static Response setting(Workplace work, Page page) {
        page.navigate(work.at("/course/settings?key=place.paceMetres"));
        page.locator("#value").fill("9");
        return sent(page, "form.entry button.main");
    }

    private static Response file(Workplace work, Page page) {
        return handedIn(work, page, "seen.csv", "date,tmax,tmin,rain\n2025-03-01,14,5,0\n");
    }

    private static Response badFile(Workplace work, Page page) {
        return handedIn(work, page, "seen-bad.csv", "date,tmax,tmin,rain\n2025-03-01,warm,5,0\n");
    }

    private static Response handedIn(Workplace work, Page page, String name, String text) {
        page.navigate(work.at("/course/files"));
        page.locator("#weather").setInputFiles(work.file(name, text));
        return sent(page, "form:has(#weather) button.main");
    }

    @Override
    public String toString() {
        return name;
    }
}
