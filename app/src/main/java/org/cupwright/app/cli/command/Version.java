package org.cupwright.app.cli.command;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The program's version, from the jar it runs from. */
public final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        return new String[] {"cupwright " + text()};
    }

    public static String text() {
        return Optional.ofNullable(Version.class.getPackage().getImplementationVersion())
                .orElse("development");
    }
}
