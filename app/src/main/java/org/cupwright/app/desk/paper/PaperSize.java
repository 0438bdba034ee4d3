package org.cupwright.app.desk.paper;

/** The paper a sheet is printed on, upright. */
public enum PaperSize {
    A4(210, 297),
    LETTER(215.9, 279.4);

    private final double widthMillimetres;
    private final double heightMillimetres;

    PaperSize(double widthMillimetres, double heightMillimetres) {
        this.widthMillimetres = widthMillimetres;
        this.heightMillimetres = heightMillimetres;
    }

    public double widthMillimetres() {
        return widthMillimetres;
    }

    public double heightMillimetres() {
        return heightMillimetres;
    }
}
