package longpoint.deck;

import java.util.ArrayList;
import java.util.List;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;

/** Numbers pieces, names their sides, and gives equal pieces one letter. */
final class Naming {
  /** Two bevels nearer than this many degrees are one setting of the saw. */
  private static final double SAME_BEVEL = 0.01;

  private record Pattern(Panel panel, Piece piece, String cut) {}

  private final List<Pattern> patterns = new ArrayList<>();

  /** The pieces of one plane; call plane by plane, the letters run on. */
  List<Piece> name(Ground ground, List<Laying.Cell> cells) {
    List<Piece> pieces = new ArrayList<>(cells.size());
    for (Laying.Cell cell : cells) {
      int number = pieces.size() + 1;
      String id = ground.plane().id() + ":" + number;
      List<PieceEdge> edges = edges(cell.outline(), ground);
      Piece piece = new Piece(id, number, cell.course(), cell.outline(), edges, "");
      pieces.add(piece.withCut(letter(piece, ground.panel())));
    }
    return pieces;
  }

  private static List<PieceEdge> edges(Region outline, Ground ground) {
    List<PieceEdge> edges = new ArrayList<>();
    List<Ring> rings = new ArrayList<>(outline.holes());
    rings.add(0, outline.shell());
    for (Ring ring : rings) {
      for (int i = 0; i < ring.size(); i++) {
        edges.add(edge(ring.side(i), ground));
      }
    }
    return edges;
  }

  private static PieceEdge edge(Segment side, Ground ground) {
    double near = ground.panel().sliver() / 2;
    for (PieceEdge rim : ground.rims()) {
      if (Ground.on(side, rim.line(), near)) {
        return new PieceEdge(side, rim.use(), rim.bevel());
      }
    }
    Point run = side.to().minus(side.from());
    boolean level = Math.abs(run.y()) < Math.abs(run.x());
    return new PieceEdge(side, level ? PieceEdge.Use.COURSE : PieceEdge.Use.JOINT, 0);
  }

  private String letter(Piece piece, Panel panel) {
    if (piece.area() >= panel.area() - panel.sliver() * panel.width()) {
      return Piece.WHOLE;
    }
    for (Pattern pattern : patterns) {
      if (pattern.panel.equals(panel) && same(pattern.piece, piece, panel.sliver())) {
        return pattern.cut;
      }
    }
    String letters = letters(patterns.size());
    patterns.add(new Pattern(panel, piece, letters));
    return letters;
  }

  /** A to Z, then AA, AB … */
  private static String letters(int index) {
    String last = String.valueOf((char) ('A' + index % 26));
    return index < 26 ? last : letters(index / 26 - 1) + last;
  }

  private static boolean same(Piece a, Piece b, double near) {
    Ring ra = a.outline().shell();
    Ring rb = b.outline().shell();
    if (ra.size() != rb.size()
        || !a.outline().holes().isEmpty()
        || !b.outline().holes().isEmpty()
        || Math.abs(a.length() - b.length()) > near
        || Math.abs(a.width() - b.width()) > near) {
      return false;
    }
    for (int shift = 0; shift < ra.size(); shift++) {
      if (matches(a, b, shift, 1, near) || matches(a, b, shift, -1, near)) {
        return true;
      }
    }
    return false;
  }

  /**
   * @param way 1 as they lie, −1 with {@code b} turned end for end
   */
  private static boolean matches(Piece a, Piece b, int shift, int way, double near) {
    Bounds ba = a.bounds();
    Bounds bb = b.bounds();
    for (int i = 0; i < a.outline().shell().size(); i++) {
      Point p = a.outline().shell().corner(i).minus(ba.middle());
      Point q = b.outline().shell().corner(i + shift).minus(bb.middle()).times(way);
      int n = a.outline().shell().size();
      double bevels = a.edges().get(i).bevel() - b.edges().get((i + shift) % n).bevel();
      if (p.distance(q) > near || Math.abs(bevels) > SAME_BEVEL) {
        return false;
      }
    }
    return true;
  }
}
