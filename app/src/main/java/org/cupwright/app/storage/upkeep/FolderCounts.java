package org.cupwright.app.storage.upkeep;

/**
 * How much a data file holds.
 *
 * @param courses courses
 * @param surveys surveyed greens, every version
 * @param plans days with a plan
 * @param facts entries of the logbook, corrections among them
 * @param photos photos of something odd
 * @param photosMissing entries whose photo is not among them
 */
public record FolderCounts(long courses, long surveys, long plans, long facts, long photos, long photosMissing) {
    public static final FolderCounts NONE = new FolderCounts(0, 0, 0, 0, 0, 0);
}
