package org.cupwright.app.storage.upkeep;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A backup that was put in place.
 *
 * @param source the backup
 * @param holds what is kept now
 * @param before where the copy is of what was kept before; empty where nothing was
 */
public record RestoreDone(Path source, FolderCounts holds, Optional<Path> before) {}
