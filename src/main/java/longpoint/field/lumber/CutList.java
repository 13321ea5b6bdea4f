package longpoint.field.lumber;

import java.util.List;
import longpoint.framing.FramingSet;
import longpoint.framing.Shop;
import longpoint.framing.edge.EdgeBoard;
import longpoint.framing.gable.GableWall;
import longpoint.framing.gable.HighWall;
import longpoint.framing.gable.Ladder;
import longpoint.framing.stick.Rafter;
import longpoint.framing.truss.RidgeBlocks;
import longpoint.geometry.Segment;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.surface.LineKind;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofSurface;

/**
 * Every piece of board that a frame takes and no factory sends: blocks, ladders, fascia and rake
 * boards, rafters, gable studs. Trusses are not in it.
 */
final class CutList {
  private final Plan plan;
  private final RoofSurface surface;
  private final FramingSet framing;
  private final LumberChoices choices;
  private final Shop shop;
  private final Pieces pieces;

  private CutList(Plan plan, RoofSurface surface, FramingSet framing, LumberChoices choices) {
    this.plan = plan;
    this.surface = surface;
    this.framing = framing;
    this.choices = choices;
    this.shop = Shop.of(plan.unit());
    this.pieces = new Pieces(shop.mark(), choices.longest());
  }

  /** Like pieces together, by use and then the longest first. */
  static List<Cut> of(Plan plan, RoofSurface surface, FramingSet framing, LumberChoices choices) {
    CutList list = new CutList(plan, surface, framing, choices);
    framing.ridgeBlocks().forEach(list::blocks);
    framing.ladders().forEach(list::ladder);
    framing.gableWalls().forEach(list::gableWall);
    framing.highWalls().forEach(list::highWall);
    framing.fascia().forEach(list::edgeBoard);
    framing.rafters().forEach(list::rafter);
    return list.pieces.cuts();
  }

  private Section section(Use use, double thickness) {
    return new Section(thickness, choices.width(use.role()));
  }

  private double thickness(String part) {
    return plan.part(part).map(p -> p.frame().thickness()).orElse(shop.flat());
  }

  private void blocks(RidgeBlocks blocks) {
    Use use =
        switch (blocks.place()) {
          case RIDGE -> Use.RIDGE_BLOCK;
          case VALLEY -> Use.VALLEY_BLOCK;
        };
    pieces.add(square(use, blocks.length(), blocks.run()), blocks.count());
  }

  private Piece square(Use use, double length, String at) {
    Section section = section(use, shop.flat());
    return new Piece(use, section, length, EndCut.SQUARE, EndCut.SQUARE, at);
  }

  private void ladder(Ladder ladder) {
    String at = ladder.side();
    Piece lookout = square(Use.LOOKOUT, ladder.lookoutLength(), at);
    pieces.add(lookout, ladder.lookouts().size());
    double plumb = 90 - ladder.plumbCut();
    EndCut lower = EndCut.onEdge(ladder.blockBevel());
    for (int i = 0; i < ladder.blocks().size(); i++) {
      boolean top = i == ladder.blocks().size() - 1;
      EndCut upper = top ? EndCut.onEdge(plumb) : EndCut.SQUARE;
      double length = ladder.blocks().get(i);
      if (length < shop.flat()) {
        continue;
      }
      pieces.add(new Piece(Use.LADDER_BLOCK, lookout.section(), length, lower, upper, at), 1);
    }
    Section fly = section(Use.FLY_RAFTER, thickness(ladder.part()));
    EndCut cut = EndCut.onFace(plumb);
    List<Double> lookouts =
        ladder.lookouts().stream().map(v -> v + ladder.lookoutWidth() / 2).toList();
    pieces.addRow(new Piece(Use.FLY_RAFTER, fly, ladder.rakeLength(), cut, cut, at), lookouts);
  }

  /** Studs up to the underside of a rafter of the width the boards have; long points. */
  private void gableWall(GableWall wall) {
    Section section = section(Use.GABLE_STUD, thickness(wall.part()));
    List<Double> heights = wall.heights();
    for (int i = 0; i < heights.size(); i++) {
      double before = i > 0 ? Math.abs(heights.get(i) - heights.get(i - 1)) : 0;
      double after = i + 1 < heights.size() ? Math.abs(heights.get(i + 1) - heights.get(i)) : 0;
      double slope = Math.max(before, after) / wall.spacing();
      double passing = choices.width(Role.RAFTER) * Math.sqrt(1 + slope * slope);
      double length = heights.get(i) - passing + slope * section.thickness() / 2;
      EndCut top = EndCut.onFace(Math.toDegrees(Math.atan(slope)));
      if (length > section.width()) {
        pieces.add(new Piece(Use.GABLE_STUD, section, length, EndCut.SQUARE, top, wall.side()), 1);
      }
    }
  }

  private void highWall(HighWall wall) {
    double thickness = thickness(wall.part());
    Section section = section(Use.WALL_STUD, thickness);
    EndCut square = EndCut.SQUARE;
    if (wall.stud() > 0) {
      Piece stud = new Piece(Use.WALL_STUD, section, wall.stud(), square, square, wall.side());
      pieces.add(stud, wall.places().size());
    }
    Piece plate = new Piece(Use.WALL_PLATE, section, wall.length(), square, square, wall.side());
    pieces.addRow(plate, wall.places());
    pieces.addRow(plate, wall.places());
  }

  private void edgeBoard(EdgeBoard board) {
    boolean eave = board.kind() == LineKind.EAVE;
    Use use = eave ? Use.FASCIA : Use.RAKE_BOARD;
    double thickness = eave ? plan.defaults().fascia() : choices.rakeThickness();
    if (thickness > 0) {
      Section section = section(use, thickness);
      EndCut from = end(board.from());
      EndCut to = end(board.to());
      Piece row = new Piece(use, section, board.length(), from, to, board.line());
      pieces.addRow(row, eave ? tails(board) : List.of());
    }
  }

  private static EndCut end(EdgeBoard.End end) {
    return switch (end.joint()) {
      case PLUMB -> EndCut.onFace(90 - end.degrees());
      case OUTSIDE_MITRE -> EndCut.onEdge(end.degrees());
      case INSIDE_MITRE -> EndCut.onEdge(-end.degrees());
      case BUTT, SQUARE -> EndCut.SQUARE;
    };
  }

  private List<Double> tails(EdgeBoard board) {
    Segment row =
        surface.lines().stream()
            .filter(l -> l.id().equals(board.line()))
            .findFirst()
            .map(CutList::onPlan)
            .orElseThrow();
    Part part = plan.part(board.part()).orElseThrow();
    double reach =
        plan.sides(part).stream()
            .filter(s -> s.kind() == EdgeKind.EAVE)
            .mapToDouble(Side::reach)
            .max()
            .orElse(0);
    return Carried.along(row, framing, part.id(), 2 * (reach + part.frame().thickness()));
  }

  private static Segment onPlan(RoofLine line) {
    return new Segment(line.from().plan(), line.to().plan());
  }

  private void rafter(Rafter rafter) {
    Use use = Use.of(rafter.kind());
    Section section = section(use, thickness(rafter.part()));
    EndCut foot = new EndCut(90 - rafter.foot().faceCut(), 90 - rafter.sideCutFoot());
    EndCut head = new EndCut(90 - rafter.plumbCut(), 90 - rafter.sideCutHead());
    Piece piece = new Piece(rafter.mark(), use, section, rafter.length(), foot, head, rafter.run());
    if (use != Use.RIDGE_BOARD) {
      pieces.add(piece, rafter.quantity());
      return;
    }
    for (Segment place : rafter.places()) {
      double reach = 2 * section.thickness();
      pieces.addRow(piece, Carried.along(place, framing, rafter.part(), reach));
    }
  }
}
