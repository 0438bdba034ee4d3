package org.cupwright.app.office.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.cupwright.app.answers.Lines;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.desk.Progress;
import org.cupwright.app.desk.findings.KnowGround;
import org.cupwright.app.office.MadeOffice;
import org.cupwright.app.office.MadeVisit;
import org.cupwright.app.office.work.Piece;
import org.cupwright.app.office.work.WorkController;
import org.cupwright.app.office.work.Works;
import org.cupwright.app.session.Role;
import org.cupwright.app.store.sqlite.SqliteFolder;
import org.cupwright.app.visit.Told;
import org.cupwright.app.visit.Visit;
import org.cupwright.green.RestsOn;
import org.cupwright.message.Message;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.http.HttpStatus;
import org.springframework.util.LinkedMultiValueMap;
import org.springframework.util.MultiValueMap;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.servlet.mvc.support.RedirectAttributesModelMap;
import org.springframework.web.util.UriComponentsBuilder;

/** Files handed in by their page: looked at first, then brought in. */
class FilesPageTest {
    private static final String LEVELS = "hole,on,side,heading,fall\n2,12,L8,180,2.5\n";
    private static final String WEATHER = "date,tmax,tmin,rain\n2026-06-18,21,11,0\n2026-06-19,22,12,3.5\n";

    @TempDir
    private Path path;

    private final HandedIn handedIn = new HandedIn();
    private FilesController controller;
    private Works works;
    private Path data;
    private Visit visit;

    @BeforeEach
    void open() throws IOException {
        data = MadeVisit.course(path.resolve("data"));
        visit = MadeVisit.to(new SqliteFolder(data, InProcess.CLOCK), Role.SUPERINTENDENT);
        works = new Works(MadeOffice.house(data, InProcess.CLOCK));
        controller = new FilesController(handedIn, new FilesAtWork(handedIn, works), works);
    }

    @AfterEach
    void tidy() {
        works.close();
        handedIn.destroy();
    }

    /** A file as a browser sends it. */
    private record Sent(String getName, String getOriginalFilename, byte[] getBytes) implements MultipartFile {
        @Override
        public String getName() {
            return getName;
        }

        @Override
        public String getOriginalFilename() {
            return getOriginalFilename;
        }

        @Override
        public String getContentType() {
            return "application/octet-stream";
        }

        @Override
        public boolean isEmpty() {
            return getBytes.length == 0;
        }

        @Override
        public long getSize() {
            return getBytes.length;
        }

        @Override
        public byte[] getBytes() {
            return getBytes.clone();
        }

        @Override
        public InputStream getInputStream() {
            return new ByteArrayInputStream(getBytes);
        }

        @Override
        public void transferTo(File to) throws IOException {
            Files.write(to.toPath(), getBytes);
        }
    }

    private ModelAndView look(Parcel.What what, Map<String, String> fields, String field, String name, String text) {
        MultiValueMap<String, MultipartFile> files = new LinkedMultiValueMap<>();
        files.add(field, new Sent(field, name, text.getBytes(StandardCharsets.UTF_8)));
        return controller.look(visit, what, fields, files);
    }

    private ModelAndView bring(UUID parcel, Set<String> accept) {
        return controller.bring(visit, parcel, accept, new RedirectAttributesModelMap());
    }

    /** The work that a page leads to, once it has ended. */
    private Piece ended(ModelAndView page) throws InterruptedException {
        assertThat(page.getViewName()).startsWith("redirect:/work/");
        UUID id = UUID.fromString(page.getViewName().substring("redirect:/work/".length()));
        Piece piece = works.find(id, visit.session().person());
        for (int i = 0; piece.outcome().isEmpty(); i++) {
            assertThat(i).as("it does not end").isLessThan(6000);
            Thread.sleep(5);
        }
        return piece;
    }

    /** The page that a piece of work leads to. */
    private ModelAndView next(Piece piece) {
        Map<String, String> asked = UriComponentsBuilder.fromUriString(piece.next())
                .build()
                .getQueryParams()
                .toSingleValueMap();
        return controller.files(
                visit,
                Optional.ofNullable(asked.get("parcel")).map(UUID::fromString),
                Optional.of(asked.get("work")).map(UUID::fromString));
    }

    /** An invented survey of hole 1: half a metre from point to point, a slope of 2 % to the south. */
    private static String points() {
        StringBuilder text = new StringBuilder("x,y,z\n");
        for (double east = 0.25; east < MadeCourse.SIDE; east += 0.5) {
            for (double north = 0.25; north < MadeCourse.SIDE; north += 0.5) {
                text.append(String.format(
                        Locale.ROOT,
                        "%.3f,%.3f,%.4f%n",
                        MadeCourse.WEST + east + 0.1 * Math.sin(7 * north),
                        MadeCourse.SOUTH + north + 0.1 * Math.sin(5 * east),
                        20 + 0.02 * north));
            }
        }
        return text.toString();
    }

    /** The back was left out: that part is drawn as wanting, under the number it has in its list. */
    @Test
    void whatIsDoubtfulInASurveyIsDrawnBeforeItIsBroughtIn() throws InterruptedException {
        String front = points().lines()
                .filter(line -> line.startsWith("x")
                        || Double.parseDouble(line.split(",")[1]) < MadeCourse.SOUTH + MadeCourse.SIDE / 2)
                .collect(Collectors.joining("\n"));
        Map<String, String> fields = Map.of("crs", "EPSG:32626", "kind", "levelled");
        ModelAndView page = next(ended(look(Parcel.What.GROUND, fields, "elevation", "points.csv", front)));
        List<FindingsOnGround.OnGreen> drawn = ((FilesRead.Read) page.getModel().get("read")).onGround();
        assertThat(drawn).extracting(FindingsOnGround.OnGreen::title).containsExactly("Green 1");
        assertThat(drawn.get(0).says().get(0)).contains("(points.csv, hole 1)");
        assertThat(drawn.get(0).map())
                .contains("class=\"finding\"", "class=\"finding-area\"", "class=\"finding-place\"");
        assertThat(restsOn()).isEqualTo(RestsOn.OUTLINE);
    }

    private RestsOn restsOn() {
        return new KnowGround(visit.session())
                .of(visit.question())
                .greens()
                .get(0)
                .restsOn();
    }

    private static UUID parcel(ModelAndView page) {
        assertThat(page.getModel()).doesNotContainKey("told");
        return (UUID) page.getModel().get("parcel");
    }

    private static String said(ModelAndView page) {
        return String.join(
                "\n",
                ((FilesRead.Read) page.getModel().get("read"))
                        .lines().stream().map(FilesRead.Told::text).toList());
    }

    private static Told told(ModelAndView page) {
        assertThat(page.getStatus()).isEqualTo(HttpStatus.UNPROCESSABLE_CONTENT);
        return (Told) page.getModel().get("told");
    }

    private List<Integer> readings() {
        return new KnowGround(visit.session())
                .of(visit.question()).greens().stream()
                        .map(KnowGround.OfGreen::readings)
                        .toList();
    }

    @Test
    void aFileIsLookedAtFirstAndThenBroughtIn() {
        ModelAndView looked = look(Parcel.What.GROUND, Map.of(), "levels", "levels.csv", LEVELS);
        assertThat(said(looked)).contains("Nothing was stored: this was a dry run.");
        assertThat(readings()).containsExactly(0, 0, 0);
        UUID parcel = parcel(looked);
        assertThat(bring(parcel, null).getViewName()).startsWith("redirect:/course/files");
        assertThat(readings()).containsExactly(0, 1, 0);
        assertThatExceptionOfType(Problem.class)
                .isThrownBy(() -> bring(parcel, null))
                .satisfies(gone -> assertThat(gone.what().key()).isEqualTo("problem.files.gone"));
        assertThat(readings()).containsExactly(0, 1, 0);
    }

    @Test
    void aSurveyIsLookedAtAndBroughtInAsLongWork() throws InterruptedException {
        Map<String, String> fields = Map.of("crs", "EPSG:32626", "kind", "levelled");
        Piece look = ended(look(Parcel.What.GROUND, fields, "elevation", "points.csv", points()));
        assertThat(look.step().orElseThrow()).isEqualTo(new Progress.Step("greens", 1, 1));
        ModelAndView looked = next(look);
        assertThat(said(looked)).contains("Nothing was stored: this was a dry run.");
        assertThat(restsOn()).isEqualTo(RestsOn.OUTLINE);
        UUID parcel = parcel(looked);
        Piece bring = ended(bring(parcel, null));
        assertThat(restsOn()).isEqualTo(RestsOn.SURVEY);
        assertThat(next(bring).getModel()).containsKey("brought").doesNotContainKey("read");
        assertThat(handedIn.find(parcel, "Ida")).isEmpty();
        assertThat(ended(atWork().bring(visit, dropped(fields)))
                        .outcome()
                        .orElseThrow()
                        .problem())
                .isPresent();
    }

    private FilesAtWork atWork() {
        return new FilesAtWork(handedIn, works);
    }

    /** A parcel that went while its work waited. */
    private Parcel dropped(Map<String, String> fields) {
        MultiValueMap<String, MultipartFile> files = new LinkedMultiValueMap<>();
        files.add("elevation", new Sent("elevation", "points.csv", points().getBytes(StandardCharsets.UTF_8)));
        Parcel parcel = handedIn.keep(
                "Ida", Parcel.What.GROUND, fields, files, visit.session().now());
        handedIn.drop(parcel);
        return parcel;
    }

    @Test
    void aSurveyThatCannotBeReadIsToldByItsWork_andSoIsOneThatIsStopped() throws InterruptedException {
        Piece bad = ended(look(Parcel.What.GROUND, Map.of(), "elevation", "p.csv", "x,y,z\none,2,3\n"));
        assertThat(bad.outcome().orElseThrow().problem()).isPresent();
        assertThat(bad.back()).startsWith("/course/files");

        CountDownLatch goOn = new CountDownLatch(1);
        works.begin(visit, "Invented work", new Piece.Way("/", "/"), (session, progress) -> {
            try {
                assertThat(goOn.await(30, TimeUnit.SECONDS)).isTrue();
            } catch (InterruptedException stopped) {
                throw new IllegalStateException(stopped);
            }
            return new Lines(visit.texts());
        });
        ModelAndView going = look(Parcel.What.GROUND, Map.of("crs", "EPSG:32626"), "elevation", "points.csv", points());
        UUID id = UUID.fromString(going.getViewName().substring("redirect:/work/".length()));
        new WorkController(works).stop(visit, id);
        goOn.countDown();
        assertThat(ended(going)
                        .outcome()
                        .orElseThrow()
                        .problem()
                        .orElseThrow()
                        .what()
                        .key())
                .isEqualTo("problem.stopped");
        assertThat(restsOn()).isEqualTo(RestsOn.OUTLINE);
    }

    @Test
    void aMapMakesACourseAsTheCommandDoes() throws IOException {
        String map = Files.readString(MadeCourse.outlines(Files.createDirectories(path.resolve("more")), 4));
        ModelAndView looked = look(Parcel.What.GROUND, Map.of("courseId", "other"), "outlines", "map.geojson", map);
        assertThat(said(looked)).contains("4 greens");
        bring(parcel(looked), null);
        assertThat(new InProcess(data).run("findings", "--course", "other").out())
                .contains("hole 4");
    }

    @Test
    void whatIsWrongWithAFileIsToldInWordsAndNothingOfItStays() throws InterruptedException {
        Told told =
                told(look(Parcel.What.GROUND, Map.of(), "levels", "C:\\files\\levels.csv", "no,such,columns\n1,2,3\n"));
        assertThat(told.what()).contains("Columns are missing from the first line");
        assertThat(told.where()).startsWith("levels.csv").doesNotContain("C:");
        assertThat(told.tryThis()).isNotBlank();
        assertThat(told(look(Parcel.What.GROUND, Map.of(), "outlines", "empty.geojson", "{"))
                        .what())
                .isNotBlank();
        assertThat(told(look(Parcel.What.GROUND, Map.of(), "levels", "levels.csv", ""))
                        .what())
                .isEqualTo("No file was handed in.");
        assertThat(ended(look(Parcel.What.GROUND, Map.of("crs", "here"), "elevation", "p.csv", "x,y,z\n1,2,3\n"))
                        .outcome()
                        .orElseThrow()
                        .problem()
                        .orElseThrow()
                        .value())
                .isEqualTo(new Message.Name("here"));
        assertThat(told(look(Parcel.What.WEATHER, Map.of("units", "F"), "file", "w.csv", WEATHER))
                        .what())
                .contains("F");
    }

    @Test
    void weatherAndOldHoleLocationsComeIntoTheLogbook() {
        UUID weather = parcel(look(Parcel.What.WEATHER, Map.of(), "file", "weather.csv", WEATHER));
        bring(weather, Set.of());
        UUID history = parcel(
                look(Parcel.What.HISTORY, Map.of(), "file", "old.csv", "date,hole,on,side\n2026-06-18,1,12,L5\n"));
        bring(history, null);
        String log = new InProcess(data)
                .run("log", "list", "--from", "2026-06-18", "--course", MadeVisit.COURSE)
                .out();
        assertThat(log).contains("3.5 mm (weather table)", "12 on", "(notebook)");
    }

    private boolean brings(Parcel.What what, String text) {
        ModelAndView looked = look(what, Map.of(), "file", "file.csv", text);
        return ((FilesRead.Read) looked.getModel().get("read")).brings();
    }

    @Test
    void whatBringsNothingIsNotOfferedToBeBroughtIn() {
        assertThat(brings(Parcel.What.WEATHER, "date,tmax,tmin,rain\n2026-06-18,warm,11,0\n"))
                .isFalse();
        assertThat(brings(Parcel.What.WEATHER, WEATHER)).isTrue();
        assertThat(brings(Parcel.What.HISTORY, "date,hole,on,side\n2026-06-18,1,12,L5\n"))
                .isTrue();
        assertThat(brings(Parcel.What.HISTORY, "date,hole,on,side\n2026-06-18,77,12,L5\n"))
                .isFalse();
        bring(parcel(look(Parcel.What.WEATHER, Map.of(), "file", "weather.csv", WEATHER)), Set.of());
        assertThat(brings(Parcel.What.WEATHER, WEATHER)).isFalse();
        assertThat(brings(Parcel.What.WEATHER, WEATHER.replace("3.5", "4.5"))).isTrue();
    }

    @Test
    void whatLooksWrongIsAskedBeforeItIsBroughtIn() {
        String hot = "date,tmax,tmin\n2026-06-18,58,51\n2026-06-19,59,52\n";
        ModelAndView looked = look(Parcel.What.WEATHER, Map.of(), "file", "hot.csv", hot);
        FilesRead.Read read = (FilesRead.Read) looked.getModel().get("read");
        assertThat(read.brings()).isTrue();
        assertThat(read.asks()).extracting(FilesRead.Asked::about).contains("tmax");
        UUID parcel = parcel(looked);
        assertThat(told(bring(parcel, Set.of())).what()).contains("°F");
        Set<String> all =
                Set.copyOf(read.asks().stream().map(FilesRead.Asked::about).toList());
        assertThat(bring(parcel, all).getViewName()).startsWith("redirect:");
    }

    @Test
    void nobodyBringsInWhatAnotherHandedIn_andWhatIsOldGoes() {
        UUID parcel = parcel(look(Parcel.What.GROUND, Map.of(), "levels", "levels.csv", LEVELS));
        assertThat(handedIn.find(parcel, "Ida")).isPresent();
        assertThat(handedIn.find(parcel, "Ole")).isEmpty();
        Path kept = handedIn.find(parcel, "Ida")
                .orElseThrow()
                .files()
                .get("levels")
                .get(0)
                .path();
        assertThat(kept).exists();
        handedIn.keep(
                "Ole",
                Parcel.What.GROUND,
                Map.of(),
                new LinkedMultiValueMap<>(),
                visit.session().now().plusSeconds(3 * 3600));
        assertThat(handedIn.find(parcel, "Ida")).isEmpty();
        assertThat(kept).doesNotExist();
    }
}
