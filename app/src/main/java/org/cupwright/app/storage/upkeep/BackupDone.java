package org.cupwright.app.storage.upkeep;

import java.nio.file.Path;

/**
 * A backup that was written.
 *
 * @param file the backup
 * @param bytes its size
 * @param holds what is in it
 */
public record BackupDone(Path file, long bytes, FolderCounts holds) {}
