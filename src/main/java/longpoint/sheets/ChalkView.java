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
  private static final double OFF_MM = 1.4;

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
      PlaneDeck deck, Optional<ChalkSheet> chalk, Words words, double unitsPerMm) {
    Painter painter = new Painter(deck, words, unitsPerMm);
    painter.lines(chalk);
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
    private final Words words;
    private final double mm;
    private final Clutter clutter;
    private final List<Mark> lines = new ArrayList<>();
    private final List<Mark> letters = new ArrayList<>();
    private int leftOff;

    Painter(PlaneDeck deck, Words words, double unitsPerMm) {
      this.deck = deck;
      this.words = words;
      this.mm = unitsPerMm;
      Bounds box = ground(deck);
      this.clutter = new Clutter(unitsPerMm, Math.max(box.width(), box.height()));
    }

    /** Every line first, so that lettering knows what it should keep clear of. */
    void lines(Optional<ChalkSheet> chalk) {
      for (Support support : deck.supports()) {
        line(support.line(), Layers.SUPPORT, support.mark());
      }
      for (Piece piece : deck.pieces()) {
        ring(piece.outline().shell(), piece.id());
        piece.outline().holes().forEach(h -> ring(h, piece.id()));
      }
      for (PieceEdge rim : deck.rims()) {
        line(rim.line(), layer(rim.use()), deck.plane());
      }
      chalk.ifPresent(
          sheet -> {
            int number = 0;
            for (ChalkLine line : sheet.lines()) {
              line(onPlane(sheet.datum(), line), Layers.CHALK, sheet.lineId(++number));
            }
          });
    }

    private static Segment onPlane(Datum datum, ChalkLine line) {
      return new Segment(datum.onPlane(line.from()), datum.onPlane(line.to()));
    }

    void pieces() {
      for (Piece piece : deck.pieces()) {
        String text = piece.number() + " " + words.cut(piece.cut());
        double wide = Lettering.width(text, Lettering.SMALL) * mm;
        boolean fits =
            wide <= piece.length() * ROOMY && Lettering.SMALL * mm <= piece.width() * ROOMY;
        if (!fits || !letter(inside(piece), text, Anchor.CENTRE, Layers.DECK, piece.id())) {
          leftOff++;
        }
      }
    }

    /** Its centre of area, then places around it that lie inside. */
    private List<Point> inside(Piece piece) {
      Point centre = centre(piece);
      List<Point> places = new ArrayList<>(List.of(centre));
      Region ground = piece.outline();
      for (double up : new double[] {0, 0.15, -0.15, 0.3, -0.3}) {
        for (double along : new double[] {0, 0.1, -0.1, 0.2, -0.2, 0.3, -0.3}) {
          Point at = centre.plus(new Point(along * piece.length(), up * piece.width()));
          if (ground.contains(at)) {
            places.add(at);
          }
        }
      }
      return places;
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
      int number = 0;
      for (ChalkLine chalk : sheet.lines()) {
        number++;
        Segment at = onPlane(sheet.datum(), chalk);
        if (!number(at, String.valueOf(number), sheet.lineId(number))) {
          leftOff++;
        }
        if (chalk.from().y() == chalk.to().y()) {
          running(sheet.datum(), chalk.from().y());
        }
      }
    }

    /** Beside its line, above it or below, where it stands clear of the others. */
    private boolean number(Segment at, String text, String id) {
      Point off = at.length() > 0 ? at.direction().left() : new Point(0, 1);
      Point up = off.y() < 0 ? off.times(-1) : off;
      double half = Lettering.width(text, Lettering.SMALL) / 2;
      double reach = Math.abs(up.x()) * half + Math.abs(up.y()) * Lettering.SMALL / 2 + OFF_MM;
      List<Point> places = new ArrayList<>();
      for (double share : ALONG) {
        Point on = at.from().toward(at.to(), share);
        places.add(on.plus(up.times(reach * mm)));
        places.add(on.minus(up.times(reach * mm)));
      }
      return letter(places, text, Anchor.CENTRE, Layers.CHALK, id);
    }

    /** The tape's reading up the slope, outside the plane on the side it is taped from. */
    private void running(Datum datum, double v) {
      Bounds box = ground(deck);
      boolean left = datum.end() == Datum.End.LEFT;
      double x = left ? box.minX() - OUTSIDE_MM * mm : box.maxX() + OUTSIDE_MM * mm;
      Point at = new Point(x, v - Lettering.SMALL * mm / 2);
      Anchor anchor = left ? Anchor.END : Anchor.START;
      letter(List.of(at), words.length(v), anchor, Layers.DIMENSIONS, "");
    }

    /** At the first place that is clear, else at the first where no other lettering stands. */
    private boolean letter(
        List<Point> places, String text, Anchor anchor, Layer layer, String subject) {
      Mark.Text crossed = null;
      for (Point at : places) {
        Mark.Text mark = new Mark.Text(at, text, Lettering.SMALL, 0, anchor, layer, subject);
        Clutter.Shape shape = clutter.shape(mark);
        if (!clutter.covers(shape)) {
          if (!clutter.crosses(shape)) {
            return told(mark);
          }
          crossed = crossed == null ? mark : crossed;
        }
      }
      return crossed != null && told(crossed);
    }

    private boolean told(Mark.Text mark) {
      clutter.take(clutter.shape(mark));
      letters.add(mark);
      return true;
    }

    private void line(Segment at, Layer layer, String subject) {
      drawn(Mark.Path.line(at.from(), at.to(), layer, subject));
    }

    private void ring(Ring ring, String subject) {
      drawn(new Mark.Path(ring.points(), true, Layers.DECK, subject));
    }

    /** Supports cross everything: lettering stands on them where it must. */
    private void drawn(Mark.Path path) {
      lines.add(path);
      if (!path.layer().equals(Layers.SUPPORT)) {
        clutter.take(clutter.shape(path));
      }
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
