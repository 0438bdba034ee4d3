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
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.cupwright.app.cli.InProcess;
import org.cupwright.app.cli.MadeCourse;
import org.cupwright.app.desk.findings.KnowGround;
import org.cupwright.app.office.MadeVisit;
import org.cupwright.app.office.frame.ProblemPages;
import org.cupwright.app.office.visit.Visit;
import org.cupwright.app.session.Role;
import org.cupwright.app.store.sqlite.SqliteFolder;
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

/** Files handed in by their page: looked at first, then brought in. */
class FilesPageTest {
    private static final String LEVELS = "hole,on,side,heading,fall\n2,12,L8,180,2.5\n";
    private static final String WEATHER = "date,tmax,tmin,rain\n2026-06-18,21,11,0\n2026-06-19,22,12,3.5\n";

    @TempDir
    private Path path;

    private final HandedIn handedIn = new HandedIn();
    private final FilesController controller = new FilesController(handedIn);
    private Path data;
    private Visit visit;

    @BeforeEach
    void open() throws IOException {
        data = MadeVisit.course(path.resolve("data"));
        visit = MadeVisit.to(new SqliteFolder(data, InProcess.CLOCK), Role.CHANGER);
    }

    @AfterEach
    void tidy() {
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

    private static ProblemPages.Told told(ModelAndView page) {
        assertThat(page.getStatus()).isEqualTo(HttpStatus.UNPROCESSABLE_CONTENT);
        return (ProblemPages.Told) page.getModel().get("told");
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
    void aMapMakesACourseAsTheCommandDoes() throws IOException {
        String map = Files.readString(MadeCourse.outlines(Files.createDirectories(path.resolve("more")), 4));
        ModelAndView looked = look(Parcel.What.GROUND, Map.of("courseId", "other"), "outlines", "map.geojson", map);
        assertThat(said(looked)).contains("4 greens");
        bring(parcel(looked), null);
        assertThat(new InProcess(data).run("findings", "--course", "other").out())
                .contains("hole 4");
    }

    @Test
    void whatIsWrongWithAFileIsToldInWordsAndNothingOfItStays() throws IOException {
        ProblemPages.Told told =
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
        assertThat(told(look(Parcel.What.GROUND, Map.of("crs", "here"), "elevation", "p.csv", "x,y,z\n1,2,3\n"))
                        .what())
                .contains("here");
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
