package org.cupwright.app.storage.upkeep;

import java.nio.file.Path;
import java.util.List;
import org.cupwright.app.storage.upkeep.FolderReport.Damage;

/**
 * A backup that was written.
 *
 * @param file the backup
 * @param bytes its size
 * @param holds what is in it
 * @param damages what is damaged in it, as it is in what was copied: such a backup is not restored
 */
public record BackupDone(Path file, long bytes, FolderCounts holds, List<Damage> damages) {}
