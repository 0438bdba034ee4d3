package org.cupwright.policy;

/** Where a default comes from; shown beside the setting wherever it shows. */
public enum SourceKind {
    /** Read in a publication that {@link Setting#source()} names. */
    PUBLISHED,
    /** What the trade does, without a source. */
    COMMON_PRACTICE,
    /** The project's own choice. */
    OURS,
    /** Recalled from a publication, not read again. */
    RECALLED
}
