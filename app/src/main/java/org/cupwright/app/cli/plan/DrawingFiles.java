package org.cupwright.app.cli.plan;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cupwright.app.answers.GreenText;
import org.cupwright.app.cli.command.Task;
import org.cupwright.app.cli.command.Writing;
import org.cupwright.app.desk.day.CourseDay;
import org.cupwright.app.desk.green.GreenOnDay;
import org.cupwright.app.maps.AreaOnMap;
import org.cupwright.app.maps.GreenDrawing;
import org.cupwright.app.maps.GreenGeoJson;
import org.cupwright.app.maps.GreenMap;
import org.cupwright.app.maps.Png;
import org.cupwright.app.texts.Texts;
import org.cupwright.green.findings.GroundFinding;
import org.cupwright.holelocation.Judgement;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** A green as files: a drawing, the same as a picture, and GeoJSON. All that are asked for are written, or none. */
final class DrawingFiles {
    /** So that it prints sharp as wide as a page: our choice. */
    private static final int PICTURE_PIXELS = 1600;

    @Option(names = "--svg", paramLabel = "FILE", description = "Writes the green's drawing as SVG.")
    private Path svg;

    @Option(names = "--png", paramLabel = "FILE", description = "Writes the same drawing as PNG.")
    private Path png;

    @Option(
            names = "--geojson",
            paramLabel = "FILE",
            description = "Writes outline, good and bad ground and best spots as GeoJSON (WGS84).")
    private Path geoJson;

    @Mixin
    private Writing writing;

    /** Whether two of the files are one and the same. */
    boolean collide() {
        return same(svg, png) || same(svg, geoJson) || same(png, geoJson);
    }

    private static boolean same(Path one, Path other) {
        return one != null
                && other != null
                && one.toAbsolutePath()
                        .normalize()
                        .equals(other.toAbsolutePath().normalize());
    }

    /** Whether the green is to be drawn, and not only put into numbers. */
    boolean drawn() {
        return svg != null || png != null;
    }

    /** Writes what was asked for; the findings are drawn, and the spot that was asked about, if one was, is marked. */
    void write(CourseDay day, GreenOnDay green, List<GroundFinding> findings, Optional<Judgement> asked, Task task) {
        Texts texts = task.texts();
        Map<Path, byte[]> files = new LinkedHashMap<>();
        if (drawn()) {
            String drawing = new GreenMap(texts)
                    .picture(drawing(day, green, asked, texts).withFindings(findings));
            if (svg != null) {
                files.put(svg, drawing.getBytes(StandardCharsets.UTF_8));
            }
            if (png != null) {
                files.put(png, Png.of(drawing, PICTURE_PIXELS));
            }
        }
        if (geoJson != null) {
            files.put(geoJson, document(day, green, asked).getBytes(StandardCharsets.UTF_8));
        }
        writing.write(task, files);
    }

    private static GreenDrawing drawing(CourseDay day, GreenOnDay green, Optional<Judgement> asked, Texts texts) {
        return GreenDrawing.of(green.judgement(), green.ground())
                .withTitle(new GreenText(texts).pictureTitle(day, green.hole()))
                .withAreas(areas(green))
                .withSpots(asked.map(Judgement::position).stream().toList());
    }

    private static List<AreaOnMap> areas(GreenOnDay green) {
        return green.areas().stream()
                .map(one -> new AreaOnMap(one.area().number(), one.area().place(), one.today()))
                .toList();
    }

    private static String document(CourseDay day, GreenOnDay green, Optional<Judgement> asked) {
        Map<String, String> about = new LinkedHashMap<>();
        about.put("course", day.course().id());
        about.put("date", day.date().toString());
        int epsg = day.course().frame().epsg();
        return new GreenGeoJson(green.judgement(), epsg, about).document(asked);
    }
}
