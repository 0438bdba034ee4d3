package org.cupwright.app.sheets;

import java.awt.geom.AffineTransform;
import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** Every path on a page of a PDF, where it is on the paper: read from the page's own drawing operators. */
final class PaperPaths extends PDFGraphicsStreamEngine {
    private static final double MILLIMETRES_A_POINT = 25.4 / 72;

    private final List<Drawn> drawn = new ArrayList<>();
    private GeneralPath path = new GeneralPath();

    private final int number;

    private PaperPaths(PDPage page, int number) {
        super(page);
        this.number = number;
    }

    /**
     * One path.
     *
     * @param page counted from 1
     * @param shape in millimetres from the page's lower left corner
     * @param stroked whether it is a line, or else filled
     * @param rgb its colour
     * @param widthMillimetres a line's width
     */
    record Drawn(int page, GeneralPath shape, boolean stroked, int rgb, double widthMillimetres) {
        List<Point2D> corners() {
            List<Point2D> corners = new ArrayList<>();
            double[] at = new double[6];
            for (PathIterator pieces = shape.getPathIterator(null); !pieces.isDone(); pieces.next()) {
                int kind = pieces.currentSegment(at);
                if (kind == PathIterator.SEG_MOVETO || kind == PathIterator.SEG_LINETO) {
                    corners.add(new Point2D.Double(at[0], at[1]));
                }
            }
            return corners;
        }

        Point2D middle() {
            Rectangle2D box = shape.getBounds2D();
            return new Point2D.Double(box.getCenterX(), box.getCenterY());
        }
    }

    /** All paths of a document, page after page in the order they are drawn. */
    static List<Drawn> of(byte[] pdf) throws IOException {
        List<Drawn> all = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                PaperPaths paths = new PaperPaths(page, document.getPages().indexOf(page) + 1);
                paths.processPage(page);
                all.addAll(paths.drawn);
            }
        }
        return all;
    }

    private void take(boolean stroked) throws IOException {
        AffineTransform millimetres = AffineTransform.getScaleInstance(MILLIMETRES_A_POINT, MILLIMETRES_A_POINT);
        double width = transformWidth(getGraphicsState().getLineWidth()) * MILLIMETRES_A_POINT;
        int rgb = (stroked
                        ? getGraphicsState().getStrokingColor()
                        : getGraphicsState().getNonStrokingColor())
                .toRGB();
        drawn.add(new Drawn(number, new GeneralPath(millimetres.createTransformedShape(path)), stroked, rgb, width));
        path = new GeneralPath();
    }

    @Override
    public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
        moveTo((float) p0.getX(), (float) p0.getY());
        for (Point2D corner : List.of(p1, p2, p3)) {
            lineTo((float) corner.getX(), (float) corner.getY());
        }
        closePath();
    }

    @Override
    public void moveTo(float x, float y) {
        path.moveTo(x, y);
    }

    @Override
    public void lineTo(float x, float y) {
        path.lineTo(x, y);
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
        path.curveTo(x1, y1, x2, y2, x3, y3);
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.getCurrentPoint();
    }

    @Override
    public void closePath() {
        path.closePath();
    }

    @Override
    public void endPath() {
        path = new GeneralPath();
    }

    @Override
    public void strokePath() throws IOException {
        take(true);
    }

    @Override
    public void fillPath(int windingRule) throws IOException {
        take(false);
    }

    @Override
    public void fillAndStrokePath(int windingRule) throws IOException {
        take(false);
    }

    @Override
    public void clip(int windingRule) {
        // what is cut off still has its place
    }

    @Override
    public void drawImage(PDImage image) {
        throw new IllegalStateException("paper has no pictures, only lines");
    }

    @Override
    public void shadingFill(COSName name) {
        throw new IllegalStateException("paper has no shading");
    }
}
