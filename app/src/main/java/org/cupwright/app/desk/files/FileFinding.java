package org.cupwright.app.desk.files;

import org.cupwright.finding.Finding;

/** A finding and the file it was found in. */
public record FileFinding(String file, Finding finding) {}
