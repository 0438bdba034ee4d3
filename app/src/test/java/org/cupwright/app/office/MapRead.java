package org.cupwright.app.office;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What stands on a drawing, read from its text. */
public final class MapRead {
    private MapRead() {}

    /** How long the bar of its scale is, in the drawing's units. */
    public static double bar(String map) {
        Matcher bar =
                Pattern.compile("d=\"M([0-9.]+) [0-9.]+v[0-9.]+H([0-9.]+)v").matcher(group(map, "scale"));
        assertThat(bar.find()).isTrue();
        return Double.parseDouble(bar.group(2)) - Double.parseDouble(bar.group(1));
    }

    /** What is drawn under a name. */
    public static String group(String map, String name) {
        Matcher group =
                Pattern.compile("<g class=\"" + name + "\" [^>]*>(.*?)</g>").matcher(map);
        assertThat(group.find()).as(name).isTrue();
        return group.group(1);
    }

    /** The numbers in a text, in turn. */
    public static List<Double> numbers(String text) {
        return Pattern.compile("-?[0-9]+(?:[.][0-9]+)?")
                .matcher(text)
                .results()
                .map(found -> Double.valueOf(found.group()))
                .toList();
    }
}
