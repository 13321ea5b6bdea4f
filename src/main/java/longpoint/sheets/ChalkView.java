package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.deck.Piece;
import longpoint.deck.PieceEdge;
import longpoint.deck.PlaneDeck;
import longpoint.deck.Support;
import longpoint.drawing.Anchor;
import longpoint.drawing.Drawing;
import longpoint.drawing.Layer;
import longpoint.drawing.Lettering;
import longpoint.drawing.Mark;
import longpoint.field.chalk.ChalkLine;
import longpoint.field.chalk.ChalkSheet;
import longpoint.field.chalk.Datum;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.units.LengthText;
import longpoint.units.LengthUnit;

/**
 * One plane of the deck laid flat, in real size: its edges, supports, pieces with their numbers and
 * letters, and the chalk lines with the numbers they have in the sheet's table. Seen from above
 * with the eave at the foot; x is u, y is v.
 *
 * @param title of the plane
 * @param marks in the order they are painted
 * @param leftOff numbers that found no place at this scale
 */
public record ChalkView(String title, List<Mark> marks, int leftOff) {
  /** Where along a line its number may stand, best first. */
  private static final double[] ALONG = {0.5, 0.35, 0.65, 0.2, 0.8, 0.1, 0.9, 0.42, 0.58, 0.28};

  /** Lettering this far from a line, millimetres. */
  private static final double OFF_MM = 0.8;

  /** Running figures stand this far outside the plane, millimetres. */
  private static final double OUTSIDE_MM = 2;

  public ChalkView {
    marks = List.copyOf(marks);
  }

  /**
   * @param chalk the plane's chalk sheet, if there is one
   * @param unitsPerMm plan units to a millimetre of paper, &gt; 0
   */
  public static ChalkView of(
      PlaneDeck deck, Optional<ChalkSheet> chalk, LengthUnit unit, double unitsPerMm) {
    Painter painter = new Painter(deck, unit, unitsPerMm);
    painter.pieces();
    chalk.ifPresent(painter::chalk);
    return new ChalkView(String.join(" + ", deck.planes()), painter.inOrder(), painter.leftOff);
  }

  public Drawing drawing() {
    return new Drawing(title, marks);
  }

  /** The box around everything but lettering outside the plane. */
  static Bounds ground(PlaneDeck deck) {
    Bounds box = Bounds.EMPTY;
    for (Region region : deck.ground()) {
      box = box.with(region.shell().bounds());
    }
    return box;
  }

  /** The steps, with what they share. */
  private static final class Painter {
    private final PlaneDeck deck;
    private final LengthUnit unit;
    private final double mm;
    private final Clutter clutter;
    private final List<Mark> lines = new ArrayList<>();
    private final List<Mark> letters = new ArrayList<>();
    private int leftOff;

    Painter(PlaneDeck deck, LengthUnit unit, double unitsPerMm) {
      this.deck = deck;
      this.unit = unit;
      this.mm = unitsPerMm;
      Bounds box = ground(deck);
      this.clutter = new Clutter(unitsPerMm, Math.max(box.width(), box.height()));
    }

    void pieces() {
      for (Support support : deck.supports()) {
        line(support.line(), Layers.SUPPORT, support.mark());
      }
      for (Piece piece : deck.pieces()) {
        ring(piece.outline().shell(), piece.id());
        piece.outline().holes().forEach(h -> ring(h, piece.id()));
        String text = piece.number() + " " + piece.cut();
        double wide = Lettering.width(text, Lettering.SMALL) * mm;
        boolean fits =
            wide <= piece.length() * ROOMY && Lettering.SMALL * mm <= piece.width() * ROOMY;
        if (!fits || !letter(centre(piece), text, Anchor.CENTRE, Layers.DECK, piece.id())) {
          leftOff++;
        }
      }
      for (PieceEdge rim : deck.rims()) {
        line(rim.line(), layer(rim.use()), deck.plane());
      }
    }

    /** Lettering fills at most this share of a piece either way. */
    private static final double ROOMY = 0.8;

    private static Point centre(Piece piece) {
      Ring ring = piece.outline().shell();
      Point o = ring.corner(0);
      double twice = 0;
      Point sum = new Point(0, 0);
      for (int i = 1; i + 1 < ring.size(); i++) {
        Point a = ring.corner(i).minus(o);
        Point b = ring.corner(i + 1).minus(o);
        double area = a.cross(b);
        twice += area;
        sum = sum.plus(a.plus(b).times(area / 3));
      }
      return twice == 0 ? o : o.plus(sum.times(1 / twice));
    }

    void chalk(ChalkSheet sheet) {
      Datum datum = sheet.datum();
      int number = 0;
      for (ChalkLine chalk : sheet.lines()) {
        number++;
        Segment at = new Segment(datum.onPlane(chalk.from()), datum.onPlane(chalk.to()));
        String id = sheet.lineId(number);
        line(at, Layers.CHALK, id);
        if (!number(at, String.valueOf(number), id)) {
          leftOff++;
        }
        if (chalk.from().y() == chalk.to().y()) {
          running(datum, chalk.from().y());
        }
      }
    }

    private boolean number(Segment at, String text, String id) {
      Point off = at.length() > 0 ? at.direction().left().times(OFF_MM * mm) : new Point(0, 0);
      Point up = off.y() < 0 ? off.times(-1) : off;
      for (double share : ALONG) {
        Point p = at.from().toward(at.to(), share).plus(up);
        if (letter(p, text, Anchor.START, Layers.CHALK, id)) {
          return true;
        }
      }
      return false;
    }

    /** The tape's reading up the slope, outside the plane on the side it is taped from. */
    private void running(Datum datum, double v) {
      Bounds box = ground(deck);
      boolean left = datum.end() == Datum.End.LEFT;
      double x = left ? box.minX() - OUTSIDE_MM * mm : box.maxX() + OUTSIDE_MM * mm;
      Point at = new Point(x, v - Lettering.SMALL * mm / 2);
      letter(at, LengthText.of(v, unit), left ? Anchor.END : Anchor.START, Layers.DIMENSIONS, "");
    }

    private boolean letter(Point at, String text, Anchor anchor, Layer layer, String subject) {
      Mark mark = new Mark.Text(at, text, Lettering.SMALL, 0, anchor, layer, subject);
      Clutter.Shape shape = clutter.shape(mark);
      if (clutter.covers(shape)) {
        return false;
      }
      clutter.take(shape);
      letters.add(mark);
      return true;
    }

    private void line(Segment at, Layer layer, String subject) {
      lines.add(Mark.Path.line(at.from(), at.to(), layer, subject));
    }

    private void ring(Ring ring, String subject) {
      lines.add(new Mark.Path(ring.points(), true, Layers.DECK, subject));
    }

    List<Mark> inOrder() {
      List<Mark> all = new ArrayList<>(lines);
      all.addAll(letters);
      return all;
    }

    private static Layer layer(PieceEdge.Use use) {
      return switch (use) {
        case RIDGE -> Layers.RIDGE;
        case HIP -> Layers.HIP;
        case VALLEY, SHEET_LINE -> Layers.VALLEY;
        case FASCIA -> Layers.EAVE;
        case RAKE -> Layers.RAKE;
        case BREAK -> Layers.BREAK;
        case ABUTMENT -> Layers.ABUTMENT;
        case STEP, END -> Layers.STEP;
        case COURSE, JOINT -> Layers.DECK;
      };
    }
  }
}
