package org.cupwright.browser;

import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.assertj.core.api.Assertions;
import org.cupwright.browser.FaultyLine.Fault;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/**
 * Whatever happens in whatever order between a telephone and the office: all that the page ever said it has is in the
 * logbook once, what it said was sent among it, nothing else is, and of one hole in the order in which it was written.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class RoundSequencesIT {
    private static final String ROUND = "/round?date=" + Days.FIRST;
    private static final int FULL = 500;
    private static final int REDUCED = 30;
    private static final int HOLES = 3;
    private static final int LONGEST = 10;
    private static final double RESTARTS = 0.008;

    /** Of the odds of what happens next. */
    private static final Map<Step, Integer> OF_A_HUNDRED = new EnumMap<>(Map.of(
            Step.SAVE,
            40,
            Step.SAVE_AND_KILL,
            5,
            Step.KILL,
            6,
            Step.OFFLINE,
            10,
            Step.ONLINE,
            13,
            Step.FAULT,
            22,
            Step.SIGN_OUT,
            4));

    private static final List<Step> ODDS = OF_A_HUNDRED.entrySet().stream()
            .flatMap(step -> Collections.nCopies(step.getValue(), step.getKey()).stream())
            .toList();

    private static final String SAVE = """
            async ([hole, text]) => {
              location.hash = hole;
              const is = () => document.querySelector('h1')?.textContent.startsWith('Hole ' + hole + ' ');
              for (let look = 0; look < 500 && !is(); look++) { await new Promise(later => setTimeout(later, 10)); }
              if (text === '') { document.getElementById('as-planned').click(); return; }
              const field = document.getElementById('odd');
              field.value = text;
              field.form.requestSubmit();
            }
            """;

    /** In the order in which they were written: each with its hole. */
    private static final String WRITTEN =
            "async () => (await (await import('/round/files/kept.js')).entries()).map(one => [one.id, one.says.hole])";

    private static final String FORGET = "async () => { const kept = await import('/round/files/kept.js');"
            + " for (const one of await kept.entries()) { await kept.dropEntry(one.id); } }";

    private enum Step {
        SAVE,
        SAVE_AND_KILL,
        KILL,
        OFFLINE,
        ONLINE,
        FAULT,
        SIGN_OUT
    }

    private final Deque<Fault> faults = new ArrayDeque<>();
    private final Map<String, Integer> said = new LinkedHashMap<>();
    private final Set<String> saidSent = new LinkedHashSet<>();
    private final Map<String, List<String>> written = new LinkedHashMap<>();

    private Path data;
    private RunningOffice office;
    private FaultyLine line;
    private Chromium chromium;
    private RoundPhone phone;
    private int saved;

    @BeforeAll
    void open(@TempDir Path folder) throws Exception {
        data = folder.resolve("data");
        MadeOffice.copyTo(data);
        office = RunningOffice.open(data);
        line = new FaultyLine(office.port());
        line.faults((method, path) -> {
            synchronized (faults) {
                return faults.isEmpty() ? Fault.NONE : faults.poll();
            }
        });
        chromium = new Chromium();
        phone = RoundPhone.of(chromium.phone(ColorScheme.LIGHT, ""));
        phone.load(line.at(ROUND), Workplace.FIRST);
    }

    @AfterAll
    void close() {
        chromium.close();
        line.close();
        office.close();
    }

    @Test
    void whatThePageSaysIsSoWhateverHappens() throws Exception {
        int count = Suite.count("round sequences", FULL, REDUCED);
        for (int number = 0; number < count; number++) {
            Random random = new Random(Suite.seed() * 1_000_003 + number);
            List<String> steps = new ArrayList<>();
            try {
                sequence(number, random, steps);
            } catch (PlaywrightException | AssertionError failed) {
                throw new AssertionError("sequence " + number + " of seed " + Suite.seed() + ": " + steps, failed);
            }
        }
        inTheLogbook(KeptLog.of(data));
    }

    private void sequence(int number, Random random, List<String> steps) {
        int length = 3 + random.nextInt(LONGEST - 2);
        for (int i = 0; i < length; i++) {
            Step step = ODDS.get(random.nextInt(ODDS.size()));
            steps.add(step.name());
            take(step, random);
            hear(number);
        }
        if (random.nextDouble() < RESTARTS) {
            steps.add("RESTART");
            office.close();
            office = RunningOffice.open(data);
            line.leadTo(office.port());
        }
        line.up(true);
        synchronized (faults) {
            faults.clear();
        }
        phone.sendNow();
        phone.allSent(Workplace.FIRST);
        hear(number);
        for (Object one : (List<?>) phone.page().evaluate(WRITTEN)) {
            List<?> entry = (List<?>) one;
            Assertions.assertThat(saidSent).as("what is on the phone is told").contains((String) entry.get(0));
            written.computeIfAbsent(number + " " + entry.get(1), none -> new ArrayList<>())
                    .add((String) entry.get(0));
        }
        phone.page().evaluate(FORGET);
    }

    private void take(Step step, Random random) {
        switch (step) {
            case SAVE -> save(random);
            case SAVE_AND_KILL -> {
                save(random);
                phone = phone.reopened(line.at(ROUND));
            }
            case KILL -> phone = phone.reopened(line.at(ROUND));
            case OFFLINE -> line.up(false);
            case ONLINE -> {
                line.up(true);
                phone.sendNow();
            }
            case FAULT -> {
                synchronized (faults) {
                    faults.add(Fault.values()[1 + random.nextInt(Fault.values().length - 1)]);
                }
                phone.sendNow();
            }
            case SIGN_OUT -> phone.context().clearCookies();
            default -> throw new IllegalStateException(step.name());
        }
    }

    private void save(Random random) {
        String hole = Integer.toString(1 + random.nextInt(HOLES));
        String text = random.nextInt(3) == 0 ? "" : "Odd thing " + saved++ + ", invented";
        phone.page().evaluate(SAVE, List.of(hole, text));
    }

    /** What the page says it has, and what became of it. */
    private void hear(int number) {
        phone.said().forEach((id, state) -> {
            said.putIfAbsent(id, number);
            if (state.equals("sent")) {
                saidSent.add(id);
            }
        });
    }

    private void inTheLogbook(List<JsonNode> log) {
        said.forEach((id, number) -> Assertions.assertThat(KeptLog.times(log, id))
                .as("entry " + id + " of sequence " + number + ", seed " + Suite.seed())
                .isEqualTo(1));
        List<String> ids = log.stream()
                .map(fact -> fact.path("id").asString())
                .filter(said::containsKey)
                .toList();
        Assertions.assertThat(said.keySet()).containsAll(saidSent);
        Assertions.assertThat(said).hasSizeGreaterThanOrEqualTo(written.size()).isNotEmpty();
        written.forEach((where, order) -> Assertions.assertThat(ids.stream().filter(order::contains))
                .as("sequence and hole " + where + ", seed " + Suite.seed())
                .containsExactlyElementsOf(order));
        long odd = log.stream()
                .filter(fact -> fact.at("/payload/text").asString("").endsWith(", invented"))
                .map(fact -> fact.path("id").asString())
                .filter(id -> !said.containsKey(id))
                .count();
        Assertions.assertThat(odd).as("entries that no page ever told of").isZero();
        System.out.println(said.size() + " entries of " + Collections.max(said.values()) + " sequences, each once");
    }
}
