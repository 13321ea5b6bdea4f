package longpoint.desktop.solid;

import java.awt.Color;
import java.util.EnumSet;
import java.util.Set;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.drawing.Ink;
import longpoint.geometry.Point3;
import longpoint.sheets.solid.SolidEdge;
import longpoint.sheets.solid.SolidFace;

/**
 * Paints a house as a model on a turntable under a fixed lamp: shadow on the ground, walls, frame,
 * roof, lines. With the frame shown the roof is a veil, so that one sees the trusses through it.
 */
final class SolidPainter {
  /** To the lamp: from the left, above, and over the shoulder of whoever looks. */
  private static final double[] LAMP = unit(-0.5, 0.62, 0.6);

  /** Share of its colour that a face turned away from the lamp keeps. */
  private static final double SHADE = 0.66;

  /** Undersides of eaves keep this share. */
  private static final double UNDERSIDE = 0.55;

  /** How far picked faces are mixed with the colour of picked things. */
  private static final double PICKED = 0.62;

  /** A line lies on faces, whose depth at a pixel's middle differs a little from its own. */
  private static final double ON_FACE = 2.5;

  // Pens, in pixels.
  private static final double CHORD = 2.2;
  private static final double WEB = 1.3;
  private static final double ROOF_LINE = 1.5;
  private static final double EDGE_LINE = 1.1;
  private static final double THIN_LINE = 0.9;
  private static final double PICKED_LINE = 3;

  /** The lamp is so bright that a face this share away from it is still lit fully. */
  private static final double BRIGHT = 1.2;

  /** Webs are drawn this much fainter than chords. */
  private static final double FAINT = 0.35;

  private final DepthImage image;
  private final SolidScene scene;
  private final Projection projection;
  private final CanvasColours colours;

  private SolidPainter(DepthImage image, SolidScene scene, Stand stand, CanvasColours colours) {
    this.image = image;
    this.scene = scene;
    this.colours = colours;
    projection = new Projection(stand, image.fine(), image.width(), image.height());
  }

  /** Paints a whole frame. */
  static void paint(DepthImage image, SolidScene scene, Stand stand, CanvasColours colours) {
    SolidPainter painter = new SolidPainter(image, scene, stand, colours);
    image.clear(rgb(colours.ground(), 1));
    painter.shadow();
    painter.faces(EnumSet.of(SolidFace.Kind.WALL));
    painter.edges(EnumSet.of(SolidEdge.Kind.WALL, SolidEdge.Kind.CHORD, SolidEdge.Kind.WEB));
    painter.faces(EnumSet.of(SolidFace.Kind.ROOF, SolidFace.Kind.FASCIA));
    painter.edges(EnumSet.of(SolidEdge.Kind.SHEET));
    painter.edges(EnumSet.of(SolidEdge.Kind.ROOF, SolidEdge.Kind.FASCIA));
  }

  /** Every face thrown onto the ground along the light. */
  private void shadow() {
    Point3 lamp = projection.back(LAMP[0], LAMP[1], LAMP[2]);
    int rgb = rgb(colours.solidShadow(), 1);
    for (SolidFace face : scene.house().faces()) {
      if (scene.shows(SolidLayer.of(face.kind()))) {
        FlatShape.of(
                projection.of(
                    face.rings().stream()
                        .map(ring -> ring.stream().map(p -> onGround(p, lamp)).toList())
                        .toList()))
            .ifPresent(shape -> image.stain(shape, rgb));
      }
    }
  }

  private static Point3 onGround(Point3 p, Point3 lamp) {
    double along = p.z() / lamp.z();
    return new Point3(p.x() - lamp.x() * along, p.y() - lamp.y() * along, 0);
  }

  private void faces(Set<SolidFace.Kind> kinds) {
    boolean veiled = scene.shows(SolidLayer.FRAME) && image.fine() > 1;
    for (SolidFace face : scene.house().faces()) {
      if (kinds.contains(face.kind()) && scene.shows(SolidLayer.of(face.kind()))) {
        FlatShape.of(projection.of(face.rings()))
            .ifPresent(
                shape -> {
                  if (veiled && face.kind() != SolidFace.Kind.WALL) {
                    image.veil(shape, lit(face, shape));
                  } else {
                    image.fill(shape, lit(face, shape));
                  }
                });
      }
    }
  }

  private int lit(SolidFace face, FlatShape shape) {
    Color base =
        switch (face.kind()) {
          case ROOF -> colours.solidRoof();
          case WALL, FASCIA -> colours.solidWall();
        };
    if (scene.picked().contains(face.subject())) {
      base = mixed(base, colours.selection(), PICKED);
    }
    if (face.kind() == SolidFace.Kind.ROOF && shape.facing() == FlatShape.Facing.INSIDE) {
      return rgb(base, UNDERSIDE);
    }
    double[] normal = unit(-shape.byX(), shape.byY(), 1);
    double light = normal[0] * LAMP[0] + normal[1] * LAMP[1] + normal[2] * LAMP[2];
    return rgb(base, SHADE + (1 - SHADE) * Math.max(0, Math.min(1, BRIGHT * light)));
  }

  private void edges(Set<SolidEdge.Kind> kinds) {
    for (SolidEdge edge : scene.house().edges()) {
      if (kinds.contains(edge.kind()) && scene.shows(SolidLayer.of(edge.kind()))) {
        double thick =
            switch (edge.kind()) {
              case ROOF -> edge.ink() == Ink.EDGE ? EDGE_LINE : ROOF_LINE;
              case WALL, FASCIA, SHEET -> THIN_LINE;
              case CHORD -> CHORD;
              case WEB -> WEB;
            };
        image.line(
            projection.of(edge.from()),
            projection.of(edge.to()),
            (isPicked(edge) ? Math.max(thick, PICKED_LINE) : thick) * image.fine(),
            rgb(isPicked(edge) ? colours.selection() : colour(edge), 1),
            ON_FACE * image.fine());
      }
    }
  }

  /** A line picked by itself; one of a picked face is picked with it. */
  private boolean isPicked(SolidEdge edge) {
    return scene.picked().contains(edge.subject());
  }

  private Color colour(SolidEdge edge) {
    return switch (edge.kind()) {
      case ROOF, WALL, FASCIA, SHEET -> colours.of(edge.ink());
      case CHORD -> colours.solidFrame();
      case WEB -> mixed(colours.solidFrame(), colours.ground(), FAINT);
    };
  }

  private static Color mixed(Color a, Color b, double share) {
    return new Color(
        (int) (a.getRed() + (b.getRed() - a.getRed()) * share),
        (int) (a.getGreen() + (b.getGreen() - a.getGreen()) * share),
        (int) (a.getBlue() + (b.getBlue() - a.getBlue()) * share));
  }

  private static int rgb(Color colour, double share) {
    return (int) (colour.getRed() * share) << 16
        | (int) (colour.getGreen() * share) << 8
        | (int) (colour.getBlue() * share);
  }

  private static double[] unit(double x, double y, double z) {
    double length = Math.sqrt(x * x + y * y + z * z);
    return new double[] {x / length, y / length, z / length};
  }
}
