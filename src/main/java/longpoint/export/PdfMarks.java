package longpoint.export;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import longpoint.drawing.DimensionLayout;
import longpoint.drawing.Ink;
import longpoint.drawing.Layer;
import longpoint.drawing.Mark;
import longpoint.drawing.MarkVisitor;
import longpoint.drawing.Pen;
import longpoint.drawing.Placed;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.state.RenderingMode;
import org.apache.pdfbox.util.Matrix;

/** Draws marks on one sheet in millimetres, y up as in the marks; one step of a PDF is a point. */
final class PdfMarks implements MarkVisitor {
  static final double POINTS_PER_MM = 72 / 25.4;

  private static final int BUTT = 0;
  private static final int ROUND = 1;

  /**
   * Largest part of a circle drawn as one curve: within three hundred-thousandths of its radius.
   */
  private static final double QUARTER = 90;

  private final PDPageContentStream out;
  private final PdfLettering lettering;
  private Layer current;

  PdfMarks(PDPageContentStream out, PdfLettering lettering) throws IOException {
    this.out = out;
    this.lettering = lettering;
    float scale = (float) POINTS_PER_MM;
    out.transform(new Matrix(scale, 0, 0, scale, 0, 0));
    out.setLineJoinStyle(ROUND);
  }

  @Override
  public void group(Mark.Group group) {
    Placed.marksOf(group, this);
  }

  @Override
  public void path(Mark.Path path) {
    draw(
        () -> {
          layer(path.layer());
          chain(path.points());
          if (path.closed()) {
            out.closePath();
          }
          out.stroke();
        });
  }

  @Override
  public void arc(Mark.Arc arc) {
    draw(
        () -> {
          layer(arc.layer());
          moveTo(arc.at(0));
          double sweep = Math.max(-360, Math.min(360, arc.sweepDegrees()));
          int curves = Math.max(1, (int) Math.ceil(Math.abs(sweep) / QUARTER));
          for (int i = 0; i < curves; i++) {
            curve(arc, arc.startDegrees() + i * sweep / curves, sweep / curves);
          }
          if (Math.abs(arc.sweepDegrees()) >= 360) {
            out.closePath();
          }
          out.stroke();
        });
  }

  @Override
  public void text(Mark.Text text) {
    draw(
        () -> {
          layer(text.layer());
          lettering(text);
        });
  }

  @Override
  public void dimension(Mark.Dimension dimension) {
    DimensionLayout layout = DimensionLayout.of(dimension, 1);
    draw(
        () -> {
          layer(dimension.layer());
          for (Segment s : layout.strokes()) {
            chain(List.of(s.from(), s.to()));
          }
          out.stroke();
          lettering(layout.text());
        });
  }

  @Override
  public void fill(Mark.Fill fill) {
    draw(
        () -> {
          layer(fill.layer());
          chain(fill.region().shell().points());
          out.closePath();
          for (Ring hole : fill.region().holes()) {
            chain(hole.points());
            out.closePath();
          }
          // Outlined in its own colour, or the paper shows through between neighbours.
          out.fillAndStrokeEvenOdd();
        });
  }

  private void layer(Layer layer) throws IOException {
    if (layer.equals(current)) {
      return;
    }
    Pen pen = layer.pen();
    List<Double> pattern = pen.type().patternMm();
    float[] dashes = new float[pattern.size()];
    for (int i = 0; i < dashes.length; i++) {
      dashes[i] = pattern.get(i).floatValue();
    }
    out.setLineWidth((float) pen.widthMm());
    out.setLineDashPattern(dashes, 0);
    out.setLineCapStyle(dashes.length == 0 ? ROUND : BUTT);
    ink(layer.ink());
    current = layer;
  }

  private void ink(Ink ink) throws IOException {
    float red = (ink.rgb() >> 16 & 0xFF) / 255f;
    float green = (ink.rgb() >> 8 & 0xFF) / 255f;
    float blue = (ink.rgb() & 0xFF) / 255f;
    out.setStrokingColor(red, green, blue);
    out.setNonStrokingColor(red, green, blue);
  }

  private void lettering(Mark.Text text) throws IOException {
    PdfLettering.Line line = lettering.line(text);
    double back =
        switch (text.anchor()) {
          case START -> 0;
          case MIDDLE, CENTRE -> line.width() / 2;
          case END -> line.width();
        };
    double drop =
        switch (text.anchor()) {
          case CENTRE -> text.heightMm() / 2;
          case START, MIDDLE, END -> 0;
        };
    double radians = Math.toRadians(text.degrees());
    Point along = new Point(Math.cos(radians), Math.sin(radians));
    Point from = text.at().minus(along.times(back)).minus(along.left().times(drop));
    out.beginText();
    out.setRenderingMode(RenderingMode.FILL);
    out.setFont(lettering.font(), (float) line.size());
    out.setHorizontalScaling((float) line.percent());
    out.setTextMatrix(Matrix.getRotateInstance(radians, (float) from.x(), (float) from.y()));
    out.showText(line.letters());
    out.endText();
  }

  /** A part of a circle as a cubic curve that touches it at both ends and in the middle. */
  private void curve(Mark.Arc arc, double from, double sweep) throws IOException {
    double reach = arc.radius() * 4 / 3 * Math.tan(Math.toRadians(sweep) / 4);
    Point start = direction(from);
    Point end = direction(from + sweep);
    Point first = arc.centre().plus(start.times(arc.radius())).plus(start.left().times(reach));
    Point last = arc.centre().plus(end.times(arc.radius()));
    Point second = last.minus(end.left().times(reach));
    out.curveTo(
        (float) first.x(),
        (float) first.y(),
        (float) second.x(),
        (float) second.y(),
        (float) last.x(),
        (float) last.y());
  }

  private static Point direction(double degrees) {
    return new Point(Math.cos(Math.toRadians(degrees)), Math.sin(Math.toRadians(degrees)));
  }

  private void chain(List<Point> points) throws IOException {
    moveTo(points.get(0));
    for (Point p : points.subList(1, points.size())) {
      out.lineTo((float) p.x(), (float) p.y());
    }
  }

  private void moveTo(Point p) throws IOException {
    out.moveTo((float) p.x(), (float) p.y());
  }

  @FunctionalInterface
  private interface Strokes {
    void make() throws IOException;
  }

  private static void draw(Strokes strokes) {
    try {
      strokes.make();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
