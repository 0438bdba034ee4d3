package org.cupwright.browser;

import com.google.gson.JsonObject;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;

/**
 * How soon a round is ready to be carried off, and a tap answered on a telephone four times slower than this machine.
 * No test: times are printed, beside what they are to keep to. It is run in {@code browser}, with the class path of its
 * tests: {@code java -Dcupwright.jar=../app/target/cupwright.jar -cp … org.cupwright.browser.RoundSpeed}.
 */
final class RoundSpeed {
    private static final int TIMES = 5;
    private static final int SLOWER = 4;

    /** From the click to the next picture of the page, by the page's own clock. */
    private static final String TAP = """
            find => new Promise(answered => {
              const began = performance.now();
              const head = document.querySelector('h1').textContent + document.querySelectorAll('.state').length;
              document.querySelector(find).click();
              const look = () => requestAnimationFrame(() => {
                const now = document.querySelector('h1').textContent + document.querySelectorAll('.state').length;
                now === head ? look() : setTimeout(() => answered(performance.now() - began), 0);
              });
              look();
            })
            """;

    private RoundSpeed() {}

    public static void main(String[] arguments) throws Exception {
        Path folder = Files.createTempDirectory("cupwright-speed");
        MadeOffice.copyTo(folder.resolve("data"));
        try (RunningOffice office = RunningOffice.open(folder.resolve("data"));
                Chromium chromium = new Chromium()) {
            String round = office.at("/round?date=" + Days.FIRST);
            try (BrowserContext first = chromium.phone(ColorScheme.LIGHT, "")) {
                RoundPhone.of(first).load(round, Workplace.FIRST); // the office judges the greens once
            }
            List<Double> ready = new ArrayList<>();
            for (int time = 0; time < TIMES; time++) {
                ready.add(ready(chromium, round));
            }
            print("ready offline", "s", ready, 5);
            print("a tap answered, CPU x " + SLOWER, "ms", taps(chromium, round), 100);
        }
    }

    private static void print(String what, String unit, List<Double> all, double most) {
        List<Double> sorted = all.stream().sorted().toList();
        System.out.printf(
                Locale.ROOT,
                "%s: median %.2f %s, slowest %.2f %s of %d; to be at most %.0f%n",
                what,
                sorted.get(sorted.size() / 2),
                unit,
                sorted.get(sorted.size() - 1),
                unit,
                sorted.size(),
                most);
    }

    /** From asking for the page, signed in, until page and day lie on the telephone. */
    private static double ready(Chromium chromium, String round) {
        try (BrowserContext context = chromium.phone(ColorScheme.LIGHT, "")) {
            Page page = context.newPage();
            page.navigate(round.replaceFirst("/round.*", "/sign-in"));
            RoundPhone phone = new RoundPhone(context, page);
            phone.signIn(Workplace.FIRST);
            page.waitForURL("**/");
            long began = System.nanoTime();
            page.navigate(round);
            phone.kept();
            return (System.nanoTime() - began) / 1e9;
        }
    }

    private static List<Double> taps(Chromium chromium, String round) {
        List<Double> taps = new ArrayList<>();
        try (BrowserContext context = chromium.phone(ColorScheme.LIGHT, "")) {
            RoundPhone phone = new RoundPhone(context, context.newPage());
            phone.load(round, Workplace.FIRST);
            JsonObject rate = new JsonObject();
            rate.addProperty("rate", SLOWER);
            context.newCDPSession(phone.page()).send("Emulation.setCPUThrottlingRate", rate);
            for (String hole :
                    IntStream.rangeClosed(1, 18).mapToObj(Integer::toString).toList()) {
                for (String tap : List.of("a[href='#" + hole + "']", "#as-planned", "a[href='#']")) {
                    taps.add(((Number) phone.page().evaluate(TAP, tap)).doubleValue());
                }
            }
        }
        return taps;
    }
}
