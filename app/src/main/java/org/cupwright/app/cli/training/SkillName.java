package org.cupwright.app.cli.training;

import java.util.Locale;
import java.util.stream.Stream;
import org.cupwright.app.storage.training.Skill;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A skill as it is typed: {@code event-holes}, or as JSON has it. */
final class SkillName implements ITypeConverter<Skill> {
    @Override
    public Skill convert(String typed) {
        return Stream.of(Skill.values())
                .filter(skill -> plain(skill.name()).equals(plain(typed)))
                .findFirst()
                .orElseThrow(() -> new TypeConversionException(
                        "give finding, cutting, cup, plug, finish, reporting or event-holes"));
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[-_]", "");
    }
}
