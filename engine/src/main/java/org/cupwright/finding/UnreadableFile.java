package org.cupwright.finding;

/**
 * A survey file of which nothing can be used; the person who has the file can mend it.
 *
 * <p>Carries no stack trace: the trouble is in the data, not in the code that found it.
 */
public final class UnreadableFile extends RuntimeException {
    private final transient Finding finding;

    public UnreadableFile(Finding finding) {
        this(finding, null);
    }

    /**
     * @param cause what a library said about it; null when the trouble was found here
     */
    public UnreadableFile(Finding finding, Throwable cause) {
        super(finding.kind() + " at " + finding.where() + ": " + finding.value(), cause, false, false);
        this.finding = finding;
    }

    public Finding finding() {
        return finding;
    }
}
