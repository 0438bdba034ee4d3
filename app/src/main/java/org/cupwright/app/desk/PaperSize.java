package org.cupwright.app.desk;

/** The paper a sheet is printed on. */
public enum PaperSize {
    A4("210mm 297mm"),
    LETTER("8.5in 11in");

    private final String css;

    PaperSize(String css) {
        this.css = css;
    }

    /** The size as style sheets write it. */
    public String css() {
        return css;
    }
}
