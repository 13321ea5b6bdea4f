package longpoint.export;

import java.io.Writer;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import longpoint.drawing.DimensionLayout;
import longpoint.drawing.Ink;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.drawing.MarkVisitor;
import longpoint.drawing.Pen;
import longpoint.drawing.Placed;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;

/** Writes marks one after the other as they come; holds nothing but which ids are used up. */
final class SvgMarks implements MarkVisitor {
  /** A millionth of a millimetre: far below any machine, so that readers get the figures back. */
  private static final int DECIMALS = 6;

  private final Lines out;
  private final Bounds paper;
  private final double penScale;
  private final String idStart;
  private final Map<String, Integer> used = new HashMap<>();
  private Layer current;

  /**
   * @param paper what is shown, in millimetres, y up
   * @param penScale millimetres of the file to a millimetre of pen or lettering
   * @param idStart what every id begins with, may be empty
   */
  SvgMarks(Writer out, Bounds paper, double penScale, String idStart) {
    this.out = new Lines(out);
    this.paper = paper;
    this.penScale = penScale;
    this.idStart = idStart;
  }

  /**
   * Begins a file of its own, as large as the paper.
   *
   * @param metadata XML for programs, may be empty
   */
  void open(String title, String metadata) {
    line("<?xml version=\"1.0\" encoding=\"UTF-8\"?>");
    String titleId = unique("title");
    String descId = unique("desc");
    begin(
        Lines.filled(
            "width=\"%smm\" height=\"%smm\" role=\"img\" aria-labelledby=\"%s %s\"",
            number(paper.width()), number(paper.height()), titleId, descId));
    line("<title id=\"%s\">%s</title>", titleId, XmlText.escaped(title));
    line(
        "<desc id=\"%s\">Drawing %s mm wide and %s mm high; its lettering is text.%s</desc>",
        descId,
        number(paper.width()),
        number(paper.height()),
        metadata.isEmpty() ? "" : " Longpoint opens the plan it carries.");
    if (!metadata.isEmpty()) {
      line("<metadata>%s</metadata>", metadata);
    }
    sheet();
  }

  /** Begins an element of another file, which says how large it is shown. */
  void openInside(String title) {
    begin("role=\"img\" aria-label=\"" + XmlText.escaped(title) + "\"");
    sheet();
  }

  private void begin(String attributes) {
    line(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" version=\"1.1\" %s"
            + " viewBox=\"0 0 %s %s\" font-family=\"Arial, 'Liberation Sans', Helvetica,"
            + " sans-serif\" stroke-linecap=\"round\" stroke-linejoin=\"round\">",
        attributes, number(paper.width()), number(paper.height()));
  }

  private void sheet() {
    line(
        "<rect id=\"%s\" width=\"%s\" height=\"%s\" fill=\"#ffffff\"/>",
        unique("paper"), number(paper.width()), number(paper.height()));
  }

  void close() {
    closeLayer();
    line("</svg>");
  }

  @Override
  public void group(Mark.Group group) {
    closeLayer();
    line("<g id=\"%s\">", unique(XmlText.name(group.name())));
    Placed.marksOf(group, this);
    closeLayer();
    line("</g>");
  }

  @Override
  public void path(Mark.Path path) {
    layer(path.layer());
    String end = path.closed() ? "Z" : "";
    line("<path%s d=\"%s%s\"/>", id(path.layer(), path.subject()), chain(path.points()), end);
  }

  @Override
  public void arc(Mark.Arc arc) {
    layer(arc.layer());
    String id = id(arc.layer(), arc.subject());
    String radius = number(arc.radius());
    if (Math.abs(arc.sweepDegrees()) >= 360) {
      Point c = arc.centre();
      line("<circle%s cx=\"%s\" cy=\"%s\" r=\"%s\"/>", id, x(c), y(c), radius);
      return;
    }
    Point from = arc.at(0);
    Point to = arc.at(1);
    int large = Math.abs(arc.sweepDegrees()) > 180 ? 1 : 0;
    int clockwise = arc.sweepDegrees() < 0 ? 1 : 0;
    line(
        "<path%s d=\"M%s %sA%s %s 0 %s %s %s %s\"/>",
        id, x(from), y(from), radius, radius, large, clockwise, x(to), y(to));
  }

  @Override
  public void text(Mark.Text text) {
    layer(text.layer());
    lettering(text, id(text.layer(), text.subject()));
  }

  @Override
  public void dimension(Mark.Dimension dimension) {
    layer(dimension.layer());
    DimensionLayout layout = DimensionLayout.of(dimension, penScale);
    line("<g%s>", id(dimension.layer(), dimension.subject()));
    String strokes =
        layout.strokes().stream().map(s -> chain(ends(s))).collect(Collectors.joining());
    line("<path d=\"%s\"/>", strokes);
    lettering(layout.text(), "");
    line("</g>");
  }

  @Override
  public void fill(Mark.Fill fill) {
    layer(fill.layer());
    StringBuilder d = new StringBuilder(chain(fill.region().shell().points())).append('Z');
    for (Ring hole : fill.region().holes()) {
      d.append(chain(hole.points())).append('Z');
    }
    // Outlined in its own colour, or the paper shows through between neighbours.
    line(
        "<path%s fill=\"%s\" fill-rule=\"evenodd\" d=\"%s\"/>",
        id(fill.layer(), fill.subject()), colour(fill.layer().ink()), d);
  }

  private void lettering(Mark.Text text, String id) {
    double size = Lettering.fontSize(text.heightMm() * penScale);
    Point at = text.at();
    String anchor =
        switch (text.anchor()) {
          case START -> "start";
          case MIDDLE, CENTRE -> "middle";
          case END -> "end";
        };
    // CENTRE hangs the capitals evenly about the point; dy is measured along the turned line.
    double drop =
        switch (text.anchor()) {
          case CENTRE -> text.heightMm() * penScale / 2;
          case START, MIDDLE, END -> 0;
        };
    String turn =
        text.degrees() == 0
            ? ""
            : Lines.filled(
                " transform=\"rotate(%s %s %s)\"", number(-text.degrees()), x(at), y(at));
    line(
        "<text%s x=\"%s\" y=\"%s\"%s font-size=\"%s\" text-anchor=\"%s\" fill=\"%s\""
            + " stroke=\"none\" xml:space=\"preserve\"%s>%s</text>",
        id,
        x(at),
        y(at),
        drop == 0 ? "" : " dy=\"" + number(drop) + "\"",
        number(size),
        anchor,
        colour(text.layer().ink()),
        turn,
        XmlText.escaped(text.text()));
  }

  private void layer(Layer layer) {
    if (layer.equals(current)) {
      return;
    }
    closeLayer();
    Pen pen = layer.pen();
    String dashes =
        pen.type().patternMm().stream()
            .map(mm -> number(mm * penScale))
            .collect(Collectors.joining(" "));
    line(
        "<g id=\"%s\" fill=\"none\" stroke=\"%s\" stroke-width=\"%s\"%s>",
        unique(XmlText.name(layer.name())),
        colour(layer.ink()),
        number(pen.widthMm() * penScale),
        dashes.isEmpty() ? "" : " stroke-dasharray=\"" + dashes + "\" stroke-linecap=\"butt\"");
    current = layer;
  }

  private void closeLayer() {
    if (current != null) {
      line("</g>");
      current = null;
    }
  }

  private String id(Layer layer, String subject) {
    if (subject.isEmpty()) {
      return "";
    }
    return " id=\"" + unique(XmlText.name(layer.name() + "/" + subject)) + "\"";
  }

  /** The name itself the first time, then with two full stops and a number. */
  private String unique(String name) {
    int count = used.merge(name, 1, Integer::sum);
    return count == 1 ? idStart + name : unique(name + ".." + count);
  }

  private String chain(List<Point> points) {
    StringBuilder d = new StringBuilder();
    for (Point p : points) {
      d.append(d.length() == 0 ? 'M' : 'L').append(x(p)).append(' ').append(y(p));
    }
    return d.toString();
  }

  private static List<Point> ends(Segment s) {
    return List.of(s.from(), s.to());
  }

  private String x(Point p) {
    return number(p.x() - paper.minX());
  }

  private String y(Point p) {
    return number(paper.maxY() - p.y());
  }

  private static String number(double value) {
    return Figures.plain(value, DECIMALS);
  }

  private static String colour(Ink ink) {
    return "#" + Integer.toHexString(0x1000000 | ink.rgb()).substring(1);
  }

  private void line(String pattern, Object... values) {
    out.line(pattern, values);
  }
}
