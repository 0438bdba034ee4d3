package org.cupwright.benchmarks;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The office of the invented course under many people, all on this machine: how soon it opens, how soon its pages are
 * answered to one person, then to fifty who read and five who write, and how much memory it takes, a plan of 28 days
 * included. Of what they ask half is the day, three in ten are spots of greens, each another, two in ten entries, which
 * must all be in the logbook afterwards. Each of them asks again some time after the answer, {@value #PAUSE_SECONDS} s
 * on average: our choice.
 *
 * <p>Arguments: how many seconds they ask; 60 where nothing is said.
 */
public final class OfficeLoad {
    private static final int READERS = 50;
    private static final int RECORDERS = 5;
    private static final double PAUSE_SECONDS = 4;
    private static final int SECONDS = 60;
    private static final int DAYS_PLANNED = 28;
    private static final long SEED = 1;

    /** An entry on the logbook's page, by the way to correct it. */
    private static final Pattern ENTRY =
            Pattern.compile("correct=([0-9a-f-]{36})[^>]*Ball marks", Pattern.CASE_INSENSITIVE);

    private static final List<String> KINDS = List.of("day", "spot", "entry");

    private OfficeLoad() {}

    /** What somebody asked: of which kind, how long it took in seconds, and whether it was answered as it should be. */
    private record Asked(String kind, double seconds, boolean right) {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        int seconds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : SECONDS;
        Path data = Files.createTempDirectory("cupwright-load");
        try (StartedOffice office = StartedOffice.demo(data.resolve("data"))) {
            System.out.printf("open after %.1f s%n", office.startSeconds());
            PageAsker one = new PageAsker(office.address());
            warm(one);
            alone(one);
            List<Asked> all = together(office, seconds);
            print(all, seconds);
            System.out.printf(
                    "memory after it: %d MB now, %d MB at most%n", office.residentMb(), office.mostResidentMb());
            plan(one);
            System.out.printf(
                    "memory after a plan of %d days: %d MB now, %d MB at most%n",
                    DAYS_PLANNED, office.residentMb(), office.mostResidentMb());
            check(one, all);
        } finally {
            remove(data);
        }
    }

    /** Every green judged, the day planned: what a morning has behind it when people come. */
    private static void warm(PageAsker asker) {
        asker.get("/");
        asker.post("/plan?date=2026-06-20", asker.seen("/"));
        for (int hole = 1; hole <= 18; hole++) {
            asker.get("/green/" + hole);
        }
        SplittableRandom random = new SplittableRandom(SEED + 1);
        for (int i = 0; i < 30; i++) {
            asker.get("/");
            asker.get(spot(random));
        }
    }

    private static void alone(PageAsker asker) {
        SplittableRandom random = new SplittableRandom(SEED);
        List<Asked> asked = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            asked.add(timed("day", () -> isPage(asker.get("/"))));
            asked.add(timed("spot", () -> isPage(asker.get(spot(random)))));
        }
        System.out.printf(
                "one person: the day %.0f ms, a spot %.0f ms (medians)%n",
                1000 * quantile(asked, "day", 0.5), 1000 * quantile(asked, "spot", 0.5));
    }

    private static List<Asked> together(StartedOffice office, int seconds) throws InterruptedException {
        List<Asked> all = new ArrayList<>();
        List<Thread> people = new ArrayList<>();
        SplittableRandom seeds = new SplittableRandom(SEED);
        long end = System.nanoTime() + (long) (seconds * 1e9);
        for (int person = 0; person < READERS + RECORDERS; person++) {
            SplittableRandom random = seeds.split();
            boolean writes = person >= READERS;
            people.add(new Thread(() -> {
                List<Asked> asked = person(new PageAsker(office.address()), random, writes, end);
                synchronized (all) {
                    all.addAll(asked);
                }
            }));
        }
        people.forEach(Thread::start);
        for (Thread person : people) {
            person.join();
        }
        return all;
    }

    /** Those who write make all the entries: a fifth of what is asked, though they are a tenth of the people. */
    private static List<Asked> person(PageAsker asker, SplittableRandom random, boolean writes, long end) {
        List<Asked> asked = new ArrayList<>();
        Map<String, String> token = writes ? asker.seen("/log") : Map.of();
        double pause = writes ? PAUSE_SECONDS * RECORDERS / READERS * 4 : PAUSE_SECONDS;
        pause(random, pause); // nobody begins with the others
        while (System.nanoTime() < end) {
            if (writes) {
                asked.add(timed("entry", () -> entry(asker, token, random)));
            } else if (random.nextInt(8) < 5) {
                asked.add(timed("day", () -> isPage(asker.get("/"))));
            } else {
                asked.add(timed("spot", () -> isPage(asker.get(spot(random)))));
            }
            pause(random, pause);
        }
        return asked;
    }

    private static boolean isPage(HttpResponse<String> answer) {
        return answer.statusCode() == 200;
    }

    private static boolean entry(PageAsker asker, Map<String, String> token, SplittableRandom random) {
        Map<String, String> fields = new TreeMap<>(token);
        fields.put("about", "ball-marks-mended");
        fields.put("form", UUID.randomUUID().toString());
        fields.put("hole", Integer.toString(1 + random.nextInt(18)));
        fields.put("part.count", Integer.toString(1 + random.nextInt(9)));
        return asker.post("/log/add", fields).statusCode() == 302;
    }

    /** Some place on some green, another each time. */
    private static String spot(SplittableRandom random) {
        return "/green/" + (1 + random.nextInt(18)) + "/spot?on=" + (5 + random.nextInt(150) / 10.0) + "&side=L&from="
                + (3 + random.nextInt(90) / 10.0);
    }

    private static void pause(SplittableRandom random, double mean) {
        try {
            Thread.sleep((long) (-1000 * mean * Math.log(1 - random.nextDouble())));
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private interface Question {
        boolean ask();
    }

    private static Asked timed(String kind, Question question) {
        long start = System.nanoTime();
        boolean right = question.ask();
        return new Asked(kind, (System.nanoTime() - start) / 1e9, right);
    }

    private static void plan(PageAsker asker) throws InterruptedException {
        Map<String, String> fields = new TreeMap<>(asker.seen("/weeks"));
        fields.put("date", "2026-06-20");
        fields.put("days", Integer.toString(DAYS_PLANNED));
        long start = System.nanoTime();
        String work = asker.post("/weeks/plan", fields)
                .headers()
                .firstValue("Location")
                .orElseThrow();
        HttpResponse<String> page = asker.get(asker.path(work));
        while (page.body().contains("<progress")) {
            Thread.sleep(500);
            page = asker.get(asker.path(work));
        }
        if (page.statusCode() >= 400 || page.body().contains("class=\"problem")) {
            throw new IllegalStateException("the weeks were not planned: " + page.body());
        }
        System.out.printf("plan of %d days in %.1f s%n", DAYS_PLANNED, (System.nanoTime() - start) / 1e9);
    }

    private static void print(List<Asked> all, int seconds) {
        long wrong = all.stream().filter(asked -> !asked.right()).count();
        System.out.printf(
                "%d readers, %d recorders, %d s: %d asked, %d not answered as they should be%n",
                READERS, RECORDERS, seconds, all.size(), wrong);
        for (String kind : KINDS) {
            long count = all.stream().filter(asked -> asked.kind().equals(kind)).count();
            System.out.printf(
                    "%-6s %5d  median %4.0f ms  99 of 100 within %4.0f ms%n",
                    kind, count, 1000 * quantile(all, kind, 0.5), 1000 * quantile(all, kind, 0.99));
        }
        if (wrong > 0) {
            throw new IllegalStateException(wrong + " were not answered");
        }
    }

    private static double quantile(List<Asked> all, String kind, double share) {
        double[] sorted = all.stream()
                .filter(asked -> asked.kind().equals(kind))
                .mapToDouble(Asked::seconds)
                .sorted()
                .toArray();
        return sorted.length == 0 ? Double.NaN : sorted[(int) Math.min(sorted.length - 1, share * sorted.length)];
    }

    /** Every entry that was acknowledged is on the logbook's page, and nothing was entered twice. */
    private static void check(PageAsker asker, List<Asked> all) {
        long entries =
                all.stream().filter(asked -> asked.kind().equals("entry")).count();
        Matcher kept = ENTRY.matcher(asker.get("/log?date=2026-06-20").body());
        Set<String> ids = new HashSet<>();
        while (kept.find()) {
            ids.add(kept.group(1));
        }
        System.out.printf("entries: %d acknowledged, %d in the logbook%n", entries, ids.size());
        if (ids.size() != entries) {
            throw new IllegalStateException("what was acknowledged is not what was kept");
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }
}
