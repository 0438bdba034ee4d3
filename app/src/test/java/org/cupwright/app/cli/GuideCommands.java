package org.cupwright.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The command lines that a page of the guides shows, word for word: indented lines, and code within sentences and
 * tables. A block is what stands together without a blank line; a row of a table is one of its own.
 */
record GuideCommands(String page, List<List<String>> blocks) {
    private static final Pattern INDENTED = Pattern.compile(" {4}(?:\\./)?cupwright (?<line>.*)");

    /** What a page says about a command stands after two blanks or more. */
    private static final Pattern REMARK = Pattern.compile(" {2,}.*");

    private static final Pattern WITHIN = Pattern.compile("`(?:\\./)?cupwright (?<line>[^`]*)`");

    private static final Pattern WORD = Pattern.compile("([^\\s\"]*)\"([^\"]*)\"|(\\S+)");

    static GuideCommands of(Path page) throws IOException {
        List<List<String>> blocks = new ArrayList<>();
        for (String block : Files.readString(page).split("\n(?:\\s*\n)+|\n(?=\\|)", -1)) {
            List<String> commands = new ArrayList<>();
            block.lines().forEach(line -> commands(line, commands));
            if (!commands.isEmpty()) {
                blocks.add(commands);
            }
        }
        return new GuideCommands(page.getFileName().toString(), blocks);
    }

    private static void commands(String line, List<String> into) {
        Matcher indented = INDENTED.matcher(line);
        if (indented.matches()) {
            into.add(REMARK.matcher(indented.group("line")).replaceFirst("").strip());
        } else {
            WITHIN.matcher(line).results().forEach(found -> into.add(found.group(1)));
        }
    }

    /** A command line as a shell takes it apart. */
    static List<String> words(String line) {
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(line);
        while (word.find()) {
            words.add(word.group(3) != null ? word.group(3) : word.group(1) + word.group(2));
        }
        return words;
    }
}
