package org.cupwright.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.cupwright.app.cli.InProcess.Result;
import org.cupwright.testing.Suite;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;

/**
 * Every command line of README and guides, word for word, on the invented course with its season; what is about a
 * course of one's own, on one of eighteen square greens. Each block of a page starts on a fresh folder. A reduced run
 * does what README and a sixth of the guides' blocks say; of the others it asks whether there are such commands.
 */
class GuidesIT {
    private static final Path DOCS = Path.of("..");

    /** Names of commands within sentences, which nobody types as they stand there. */
    private static final Set<String> ONLY_NAMES = Set.of("log add", "log add weather-entered", "log correct ID");

    /** A file of the course's own is in the course's own frame. */
    private static final Set<String> FRAMES = Set.of("EPSG:2154", "EPSG:32630");

    /** Files that the pages take for given, invented. */
    private static final Map<String, String> GIVEN = Map.of(
            "notebook.csv", "date,hole,on,side\n2026-05-01,1,12,L9\n2026-05-02,2,10,R8\n",
            "last-year.csv", "date,tmax,tmin,rain\n2025-06-01,21,9,0\n2025-06-02,22,10,1.5\n",
            "weather.csv", "date,tmax,tmin,rain\n2025-06-01,21,9,0\n2025-06-02,22,10,1.5\n",
            "coming.csv", "date,tmax,tmin,rain\n2026-06-20,21,9,0\n2026-06-21,22,10,1.5\n",
            "readings.csv", "hole,on,side,heading,fall,fallRight\n1,14,L9,play,-1.5,-0.6\n",
            "round-2026-06-20.json", """
                    {"round": 1, "entries": [{"id": "0b0e1c52-5f0a-4c3e-9a51-6f2f5d5b7a03", "course": "wrenfold-moor",
                     "says": {"kind": "cupChanged", "asPlanned": true, "parts": {}, "hole": "7", "day": "2026-06-20",
                     "at": "2026-06-20T05:10:00Z", "clockBehind": 0}}]}""",
            "drawn.csv", "hole,kind,on,side,radius,reason,person,date\n7,usual,12,L9,,,Ash,2026-05-01\n");

    /** What the invented course has nothing to answer to, with what is said then. */
    private static final Map<String, String> NOTHING_TO_ANSWER =
            Map.of("survey compare --hole all --since 2025-10-31", "a newer one since");

    @TempDir
    private static Path made;

    @TempDir
    private Path files;

    /** Where several pages begin with it, what it leaves behind is kept for the next. */
    private static final Set<String> LONG = Set.of("plan --days 28");

    private final Map<String, Path> afterFirst = new HashMap<>();
    private final List<String> failed = new ArrayList<>();
    private int fresh;
    private int block;

    @BeforeAll
    static void fillTheTwoFolders() throws IOException {
        MadeMorning.copyTo(made.resolve("demo"));
        Files.createDirectory(madeMorning());
        MadeOnce.copy(made.resolve("demo"), madeMorning().resolve("demo"));
        MadeOnce.copy(MadeMorning.folder().resolve("paper"), madeMorning().resolve("paper"));
        InProcess own = new InProcess(made.resolve("own"));
        Result result = own.run("import", "--course", "mine", "--outlines", MadeCourse.outlines(made, 18));
        assertThat(result.status()).as(result.err()).isZero();
    }

    @Test
    void everyCommandOfThePagesDoesWhatThePageSays() throws IOException {
        int run = 0;
        int looked = 0;
        for (Path page : pages()) {
            GuideCommands commands = GuideCommands.of(page);
            assertThat(commands.blocks()).as("commands of " + commands.page()).isNotEmpty();
            for (List<String> block : commands.blocks()) {
                if (commands.page().equals("README.md") || isDue()) {
                    run += run(commands.page(), block);
                } else {
                    looked += look(commands.page(), block);
                }
            }
        }
        assertThat(failed).isEmpty();
        System.out.println("commands of README and guides, seed " + Suite.seed() + ": run " + run + ", read " + looked);
        assertThat(run + looked).isGreaterThan(100);
        assertThat(run).isGreaterThan(30);
    }

    /** Each in a full check; else every sixth, others with another seed, since it is hundreds of plans in all. */
    private boolean isDue() {
        return Suite.full() || (block++ + Suite.seed()) % 6 == 0;
    }

    /** Whether the program knows the commands and their options; nothing is done by it. */
    private int look(String page, List<String> lines) {
        int looked = 0;
        for (String line : lines) {
            List<Object> words = new ArrayList<>(GuideCommands.words(line));
            int folder = words.indexOf("--data");
            if (folder >= 0) {
                words.subList(folder, folder + 2).clear(); // it is given anyway
            }
            words.add("--help");
            Result result = new InProcess(files.resolve("nothing")).run(words.toArray());
            if (result.status() != 0 && !ONLY_NAMES.contains(line)) {
                failed.add(page + ": " + line + "\n" + result.err());
            }
            looked++;
        }
        return looked;
    }

    private static List<Path> pages() throws IOException {
        try (Stream<Path> guides = Files.list(DOCS.resolve("docs/guide"))) {
            return Stream.concat(Stream.of(DOCS.resolve("README.md")), guides.sorted())
                    .toList();
        }
    }

    private int run(String page, List<String> block) throws IOException {
        Path folder = files.resolve(Integer.toString(fresh++));
        String first = block.get(0);
        if (first.equals("demo") && !Suite.full()) {
            afterFirst.put(first, madeMorning());
        }
        boolean begun = afterFirst.containsKey(first);
        if (begun) {
            MadeOnce.copy(afterFirst.get(first), folder);
        } else {
            Files.createDirectory(folder);
        }
        for (String name : List.of("demo", "own")) {
            boolean named = block.stream().anyMatch(line -> name.equals(folderOf(line)));
            if (named && Files.notExists(folder.resolve(name))) {
                MadeOnce.copy(made.resolve(name), folder.resolve(name));
            }
        }
        return run(page, begun ? block.subList(1, block.size()) : block, folder) + (begun ? 1 : 0);
    }

    /** A folder in which that command was run already, which {@link MadeMorning} did as pages have it. */
    private static Path madeMorning() {
        return made.resolve("morning");
    }

    private int run(String page, List<String> lines, Path folder) throws IOException {
        String lastEntry = "";
        int run = 0;
        for (String line : lines) {
            if (!ONLY_NAMES.contains(line)) {
                Result result = run(folder, line, lastEntry);
                if (!asThePageSays(line, result)) {
                    failed.add(page + ": " + line + "\n" + result.err());
                }
                if (LONG.contains(line) && line.equals(lines.get(0)) && !afterFirst.containsKey(line)) {
                    afterFirst.put(line, files.resolve("after" + afterFirst.size()));
                    MadeOnce.copy(folder, afterFirst.get(line));
                }
                lastEntry = line.startsWith("log add") ? newest(folder, "") : lastEntry;
                run++;
            }
        }
        return run;
    }

    private static boolean asThePageSays(String line, Result result) {
        String says = NOTHING_TO_ANSWER.get(line);
        return says == null
                ? result.status() == 0
                : result.status() == 1 && result.err().contains(says);
    }

    private static String folderOf(String line) {
        return line.contains("--course mine") || line.contains("--course ID") ? "own" : "demo";
    }

    private Result run(Path folder, String line, String lastEntry) throws IOException {
        Path data = folder.resolve(folderOf(line));
        List<Object> arguments = new ArrayList<>();
        String before = "";
        for (String word : GuideCommands.words(line)) {
            if (before.equals("--data")) {
                data = folder.resolve(word);
                arguments.remove(arguments.size() - 1);
            } else {
                arguments.add(meant(folder, word, before, line, lastEntry));
            }
            before = word;
        }
        if (List.of("demo", "morning", "sheets").contains(arguments.get(0)) && !line.contains("--out")) {
            arguments.addAll(List.of("--out", folder.resolve("paper"))); // no command may write beside the sources
        }
        return new InProcess(data).answering(true).run(arguments.toArray());
    }

    /** What a word of a page stands for. */
    private Object meant(Path folder, String word, String before, String line, String lastEntry) throws IOException {
        if (word.equals("ID")) {
            return before.equals("--course") ? "mine" : entry(folder, line, lastEntry);
        }
        if (FRAMES.contains(word)) {
            return "EPSG:32626";
        }
        if (before.equals("--at")) {
            return placeOnSeven(folder);
        }
        if (before.equals("--id") && word.matches("[0-9a-f]{8}")) {
            return new InProcess(folder.resolve("demo"))
                    .run("level", "list", "--json", "--hole", "7")
                    .out()
                    .replaceAll("(?s).*?\"id\"\\s*:\\s*\"([0-9a-f]+)\".*", "$1");
        }
        boolean file = word.equals("FILE")
                || word.equals("DIR")
                || word.equals("paper")
                || word.matches(".*[.](csv|ics|json|jsonl|geojson|png|svg|pdf|jpg|db)");
        return file ? file(folder, word, line) : word;
    }

    private static Path file(Path folder, String word, String line) throws IOException {
        String name = Path.of(word).getFileName().toString();
        Path file = folder.resolve(name);
        if (Files.exists(file)) {
            return file;
        }
        if (GIVEN.containsKey(name)) {
            Files.writeString(file, GIVEN.get(name));
        } else if (name.equals("ring.jpg")) {
            ImageIO.write(new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB), "jpg", file.toFile());
        } else if (name.equals("greens.geojson")) {
            Files.copy(MadeCourse.outlines(folder, 18), file);
        } else if (name.equals("points.csv")) {
            withClass(MadeCourse.survey(folder, 1, 1));
        } else if (name.equals("second.csv")) {
            Path later = Files.createDirectories(folder.resolve("later"));
            Files.move(MadeCourse.survey(later, 1, 2000, 1), file);
        } else if (line.startsWith("restore")) {
            new InProcess(folder.resolve("demo")).run("backup", file);
        }
        return file;
    }

    /** All points are ground: class 2 of the LAS formats (ASPRS). */
    private static void withClass(Path points) throws IOException {
        List<String> lines = Files.readAllLines(points);
        lines.replaceAll(line -> line + ",2");
        lines.set(0, "x,y,z,class");
        Files.write(points, lines);
    }

    /** The entry that was made last on the page; of odd things the newest. */
    private static String entry(Path folder, String line, String lastEntry) {
        boolean odd = line.startsWith("log seen") || line.startsWith("log photo");
        return odd || lastEntry.isEmpty() ? newest(folder, odd ? "something-odd" : "") : lastEntry;
    }

    private static String newest(Path folder, String kind) {
        List<String> list = new ArrayList<>(List.of("log", "list", "--json", "--from", "2026-01-01"));
        if (!kind.isEmpty()) {
            list.addAll(List.of("--kind", kind));
        }
        return JsonMapper.shared()
                .readTree(new InProcess(folder.resolve("demo"))
                        .run(list.toArray())
                        .out())
                .findValuesAsString("id")
                .stream()
                .reduce((earlier, later) -> later)
                .orElse("");
    }

    private static String placeOnSeven(Path folder) {
        var position = JsonMapper.shared()
                .readTree(new InProcess(folder.resolve("demo"))
                        .run("assess", "--hole", "7", "--on", "12", "--side", "L8", "--json")
                        .out())
                .path("position");
        return position.path("east").asDouble() + "," + position.path("north").asDouble();
    }
}
