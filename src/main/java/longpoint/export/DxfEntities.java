package longpoint.export;

import java.io.IOException;
import java.io.OutputStream;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import longpoint.drawing.Anchor;
import longpoint.drawing.Box;
import longpoint.drawing.DimensionLayout;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.drawing.MarkVisitor;
import longpoint.drawing.Placed;
import longpoint.geometry.Point;
import longpoint.geometry.Point3;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.units.LengthText;

/**
 * Marks as entities of model space, with a picture block for each dimension. Every entity that
 * shows something carries the subject's id as extended data.
 */
final class DxfEntities implements MarkVisitor {
  /** Longest string of extended data (ezdxf documentation). */
  private static final int LONGEST_DATA = 255;

  /** How far off level or plumb a line may be, degrees, and still be dimensioned as that. */
  private static final double SQUARE = 1e-7;

  /** A 3D face has four; a triangle names its last one twice (published DXF reference). */
  private static final int FACE_CORNERS = 4;

  private final DxfHandles handles;
  private final DxfScale scale;
  private final DxfTags entities = new DxfTags();
  private final DxfTags blocks = new DxfTags();
  private final Map<String, Integer> pictures = new LinkedHashMap<>();
  private final Set<Layer> layers = new LinkedHashSet<>();

  DxfEntities(DxfHandles handles, DxfScale scale) {
    this.handles = handles;
    this.scale = scale;
    space("*Model_Space", DxfHandles.MODEL_SPACE);
    space("*Paper_Space", DxfHandles.PAPER_SPACE);
  }

  /** Layers met so far, in that order. */
  Set<Layer> layers() {
    return layers;
  }

  /** Picture blocks by name, with the handles of their records. */
  Map<String, Integer> pictures() {
    return pictures;
  }

  void writeBlocks(OutputStream out) throws IOException {
    write("BLOCKS", blocks, out);
  }

  void writeEntities(OutputStream out) throws IOException {
    write("ENTITIES", entities, out);
  }

  private static void write(String section, DxfTags content, OutputStream out) throws IOException {
    new DxfTags().tag(0, "SECTION").tag(2, section).writeTo(out);
    content.writeTo(out);
    new DxfTags().tag(0, "ENDSEC").writeTo(out);
  }

  @Override
  public void path(Mark.Path path) {
    List<Point> points = path.points();
    if (points.size() == 2 && !path.closed()) {
      begin("LINE", path.layer(), "AcDbLine").point(10, points.get(0)).point(11, points.get(1));
    } else {
      polyline(points, path.closed(), path.layer());
    }
    end(path.subject());
  }

  /** A body as 3D faces and lines in space; edges that are only cuts do not show. */
  void body(Solid.Body body) {
    for (Solid.Face face : body.faces()) {
      for (FlatFace.Triangle triangle : FlatFace.of(face).triangles()) {
        begin("3DFACE", body.layer(), "AcDbFace");
        List<Point3> corners = triangle.corners();
        for (int i = 0; i < FACE_CORNERS; i++) {
          entities.place(10 + i, corners.get(Math.min(i, corners.size() - 1)));
        }
        // The fourth side runs from the last corner to itself, the third is the one after it.
        int third = (triangle.cuts() & 4) << 1;
        entities.tag(70, triangle.cuts() & 3 | third);
        end(body.name());
      }
    }
    for (Solid.Line line : body.lines()) {
      begin("LINE", body.layer(), "AcDbLine").place(10, line.from()).place(11, line.to());
      end(body.name());
    }
  }

  @Override
  public void arc(Mark.Arc arc) {
    boolean whole = Math.abs(arc.sweepDegrees()) >= 360;
    begin(whole ? "CIRCLE" : "ARC", arc.layer(), "AcDbCircle");
    entities.point(10, arc.centre()).number(40, arc.radius());
    if (!whole) {
      double last = arc.startDegrees() + arc.sweepDegrees();
      entities.tag(100, "AcDbArc");
      entities.number(50, turn(Math.min(arc.startDegrees(), last)));
      entities.number(51, turn(Math.max(arc.startDegrees(), last)));
    }
    end(arc.subject());
  }

  @Override
  public void text(Mark.Text text) {
    if (!text.text().isBlank()) {
      begin("TEXT", text.layer(), "AcDbText");
      lettering(entities, text);
      end(text.subject());
    }
  }

  @Override
  public void fill(Mark.Fill fill) {
    polyline(fill.region().shell().points(), true, fill.layer());
    end(fill.subject());
    for (Ring hole : fill.region().holes()) {
      polyline(hole.points(), true, fill.layer());
      end(fill.subject());
    }
  }

  @Override
  public void group(Mark.Group group) {
    Placed.marksOf(group, this);
  }

  @Override
  public void dimension(Mark.Dimension mark) {
    DimensionLayout layout = DimensionLayout.of(mark, scale.unitsPerMm());
    String picture = picture(mark, layout);
    double degrees = turn(Math.toDegrees(angle(mark.from(), mark.to())));
    boolean square = Math.abs(degrees / 90 - Math.rint(degrees / 90)) < SQUARE;
    begin("DIMENSION", mark.layer(), "AcDbDimension").tag(2, picture);
    entities.point(10, layout.line().to()).point(11, middle(layout.text()));
    // 32: the picture is this dimension's alone; 128: its figure was moved by hand.
    entities.tag(70, (square ? 0 : 1) + 32 + (mark.slideMm() == 0 ? 0 : 128)).tag(71, 5);
    entities.number(42, mark.from().distance(mark.to())).tag(1, figure(mark)).tag(3, "Standard");
    entities.tag(100, "AcDbAlignedDimension").point(13, mark.from()).point(14, mark.to());
    if (square) {
      entities.number(50, Math.rint(degrees / 90) % 4 * 90).tag(100, "AcDbRotatedDimension");
    }
    end(mark.subject());
  }

  /**
   * Left to the CAD program where it says the plain length, so that a stretched dimension tells the
   * truth; kept word for word where it says something else.
   */
  private String figure(Mark.Dimension mark) {
    String measured = LengthText.of(mark.from().distance(mark.to()), scale.unit());
    return mark.text().equals(measured) ? "<>" : DxfText.escaped(mark.text());
  }

  private String picture(Mark.Dimension mark, DimensionLayout layout) {
    String name = "*D" + (pictures.size() + 1);
    int record = handles.take();
    pictures.put(name, record);
    openBlock(name, record, 1);
    for (Segment s : layout.strokes()) {
      common(blocks, "LINE", record, "0", "AcDbLine").point(10, s.from()).point(11, s.to());
    }
    common(blocks, "TEXT", record, "0", "AcDbText");
    lettering(blocks, layout.text());
    for (Point p : List.of(mark.from(), mark.to(), layout.line().to())) {
      common(blocks, "POINT", record, "Defpoints", "AcDbPoint").point(10, p);
    }
    closeBlock(record);
    return name;
  }

  private void space(String name, int record) {
    openBlock(name, record, 0);
    closeBlock(record);
  }

  private void openBlock(String name, int record, int flags) {
    common(blocks, "BLOCK", record, "0", "AcDbBlockBegin").tag(2, name).tag(70, flags);
    blocks.point(10, new Point(0, 0)).tag(3, name).tag(1, "");
  }

  private void closeBlock(int record) {
    common(blocks, "ENDBLK", record, "0", "AcDbBlockEnd");
  }

  private void polyline(List<Point> points, boolean closed, Layer layer) {
    begin("LWPOLYLINE", layer, "AcDbPolyline").tag(90, points.size()).tag(70, closed ? 1 : 0);
    points.forEach(p -> entities.flat(10, p));
  }

  private void lettering(DxfTags t, Mark.Text text) {
    Point corner = Lettering.box(text, scale.unitsPerMm()).corners().get(0);
    double radians = Math.toRadians(text.degrees());
    Point along = new Point(Math.cos(radians), Math.sin(radians));
    boolean plain = text.anchor() == Anchor.START;
    // Where the lettering starts: the corner of its box is below the line it stands on.
    Point start = text.at().plus(along.times(along.dot(corner.minus(text.at()))));
    t.point(10, plain ? text.at() : start).number(40, text.heightMm() * scale.unitsPerMm());
    t.tag(1, DxfText.escaped(text.text())).number(50, turn(text.degrees())).tag(7, "Standard");
    if (!plain) {
      t.tag(72, text.anchor() == Anchor.END ? 2 : 1).point(11, text.at());
    }
    t.tag(100, "AcDbText");
    if (text.anchor() == Anchor.CENTRE) {
      t.tag(73, 2);
    }
  }

  private Point middle(Mark.Text text) {
    Box box = Lettering.box(text, scale.unitsPerMm());
    double capitals = text.heightMm() * scale.unitsPerMm() / 2;
    return text.at().plus(box.along().left().times(capitals));
  }

  private DxfTags begin(String type, Layer layer, String className) {
    layers.add(layer);
    return common(entities, type, DxfHandles.MODEL_SPACE, layer.name(), className);
  }

  private DxfTags common(DxfTags t, String type, int owner, String layer, String className) {
    t.tag(0, type).handle(5, handles.take()).handle(330, owner);
    return t.tag(100, "AcDbEntity").tag(8, layer).tag(100, className);
  }

  private void end(String subject) {
    if (!subject.isEmpty()) {
      String data = DxfText.escaped(subject);
      entities.tag(1001, DxfTables.APPLICATION);
      entities.tag(1000, data.length() <= LONGEST_DATA ? data : data.substring(0, LONGEST_DATA));
    }
  }

  private static double angle(Point from, Point to) {
    return Math.atan2(to.y() - from.y(), to.x() - from.x());
  }

  /** The same direction from 0 to just under 360. */
  private static double turn(double degrees) {
    double rest = degrees % 360;
    return rest < 0 ? rest + 360 : rest;
  }
}
