package scantling.packet;

import java.awt.geom.Line2D;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;

/** Reads the straight strokes of a page and how long they are on paper. */
final class StrokedLines extends PDFGraphicsStreamEngine {
    private static final double MM_PER_POINT = 25.4 / 72;

    private final List<Double> level = new ArrayList<>();
    private final List<Double> upright = new ArrayList<>();
    private final List<Line2D> all = new ArrayList<>();
    private final List<Point2D> path = new ArrayList<>();

    private StrokedLines(PDPage page) {
        super(page);
    }

    /** All straight strokes, in millimetres from the lower left corner of the paper. */
    static List<Line2D> all(PDPage page) throws IOException {
        StrokedLines engine = new StrokedLines(page);
        engine.processPage(page);
        return engine.all;
    }

    /** Lengths of the level strokes, in millimetres of paper. */
    static List<Double> level(PDPage page) throws IOException {
        StrokedLines engine = new StrokedLines(page);
        engine.processPage(page);
        return engine.level;
    }

    /** Lengths of the upright strokes, in millimetres of paper. */
    static List<Double> upright(PDPage page) throws IOException {
        StrokedLines engine = new StrokedLines(page);
        engine.processPage(page);
        return engine.upright;
    }

    @Override
    public void moveTo(float x, float y) {
        path.clear();
        path.add(new Point2D.Double(x, y));
    }

    @Override
    public void lineTo(float x, float y) {
        path.add(new Point2D.Double(x, y));
    }

    @Override
    public void strokePath() {
        for (int i = 1; i < path.size(); i++) {
            Point2D a = path.get(i - 1);
            Point2D b = path.get(i);
            all.add(new Line2D.Double(
                    a.getX() * MM_PER_POINT,
                    a.getY() * MM_PER_POINT,
                    b.getX() * MM_PER_POINT,
                    b.getY() * MM_PER_POINT));
            if (Math.abs(a.getY() - b.getY()) < 0.01) {
                level.add(Math.abs(a.getX() - b.getX()) * MM_PER_POINT);
            } else if (Math.abs(a.getX() - b.getX()) < 0.01) {
                upright.add(Math.abs(a.getY() - b.getY()) * MM_PER_POINT);
            }
        }
        path.clear();
    }

    @Override
    public Point2D getCurrentPoint() {
        return path.isEmpty() ? new Point2D.Double() : path.get(path.size() - 1);
    }

    @Override
    public void endPath() {
        path.clear();
    }

    @Override
    public void fillPath(int rule) {
        path.clear();
    }

    @Override
    public void fillAndStrokePath(int rule) {
        strokePath();
    }

    @Override
    public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {}

    @Override
    public void closePath() {}

    @Override
    public void clip(int rule) {}

    @Override
    public void appendRectangle(Point2D a, Point2D b, Point2D c, Point2D d) {}

    @Override
    public void drawImage(PDImage image) {}

    @Override
    public void shadingFill(COSName name) {}
}
