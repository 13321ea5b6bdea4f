package longpoint.sheets;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.drawing.Layer;
import longpoint.drawing.Mark;
import longpoint.framing.FramingSet;
import longpoint.framing.gable.Ladder;
import longpoint.framing.stick.Rafter;
import longpoint.framing.stick.RafterTape;
import longpoint.framing.truss.Girder;
import longpoint.framing.truss.TapeMarks;
import longpoint.framing.truss.Truss;
import longpoint.framing.truss.TrussMark;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Side;
import longpoint.surface.RoofSurface;

/**
 * Everything of the frame over the plan as marks, without lettering. Of a frame that belongs to a
 * larger plan only what stands in the parts of this plan is drawn.
 */
final class FrameMarks {
  /** Thinner than this on paper two faces run into one stroke: then a truss is one line. */
  private static final double TWO_FACES_MM = 1;

  /** A hanger: length along the girder and distance off its line, millimetres on paper. */
  private static final double HANGER_MM = 2.4;

  private static final double HANGER_OFF_MM = 0.7;

  private final Plan plan;
  private final FramingSet framing;
  private final double unitsPerMm;
  private final Map<String, Truss> trusses = new HashMap<>();
  private final Map<String, TrussMark> shapes = new HashMap<>();

  FrameMarks(Plan plan, FramingSet framing, double unitsPerMm) {
    this.plan = plan;
    this.framing = framing;
    this.unitsPerMm = unitsPerMm;
    framing.trusses().forEach(t -> trusses.put(t.id(), t));
    framing.marks().forEach(m -> shapes.put(m.mark(), m));
  }

  /** Walls and roof lines on quiet layers; subjects as on the roof plan. */
  static List<Mark> base(Plan plan, RoofSurface surface) {
    List<Mark> base = new ArrayList<>();
    RoofMarks.lines(surface).forEach(m -> base.add(on(FrameLayers.ROOF, m)));
    RoofMarks.walls(plan).forEach(m -> base.add(on(FrameLayers.WALL, m)));
    return base;
  }

  private static Mark on(Layer layer, Mark mark) {
    Mark.Path path = (Mark.Path) mark;
    return new Mark.Path(path.points(), path.closed(), layer, path.subject());
  }

  List<Mark> all() {
    List<Mark> marks = new ArrayList<>();
    framing.ladders().stream().filter(l -> has(l.part())).forEach(l -> marks.addAll(ladder(l)));
    rafters().forEach(r -> marks.addAll(rafter(r)));
    trusses().forEach(t -> marks.add(truss(t)));
    framing.girders().stream()
        .filter(g -> has(trusses.get(g.truss()).part()))
        .forEach(g -> marks.addAll(hangers(g)));
    return marks;
  }

  List<Truss> trusses() {
    return framing.trusses().stream().filter(t -> has(t.part())).toList();
  }

  List<Rafter> rafters() {
    return framing.rafters().stream().filter(r -> has(r.part())).toList();
  }

  List<TapeMarks> tapes() {
    return framing.tapes().stream().filter(t -> has(t.part())).toList();
  }

  List<RafterTape> rafterTapes() {
    return framing.rafterTapes().stream().filter(t -> has(t.part())).toList();
  }

  private boolean has(String part) {
    return plan.part(part).isPresent();
  }

  private Mark truss(Truss truss) {
    return stick(line(truss), thickness(truss.part()), layer(truss), truss.id());
  }

  /** A truss on its centre line, tail to tail. */
  Segment line(Truss truss) {
    TrussMark shape = shapes.get(truss.mark());
    boolean turned = truss.turn() == Truss.Turn.END_FOR_END;
    Point along = truss.to().minus(truss.from()).unit();
    double low = turned ? shape.tailHigh() : shape.tailLow();
    double high = turned ? shape.tailLow() : shape.tailHigh();
    return new Segment(truss.from().minus(along.times(low)), truss.to().plus(along.times(high)));
  }

  private static Layer layer(Truss truss) {
    return switch (truss.kind()) {
      case GIRDER, HIP_GIRDER, CROSS_GIRDER -> FrameLayers.GIRDER;
      case VALLEY -> FrameLayers.VALLEY;
      default -> FrameLayers.TRUSS;
    };
  }

  double thickness(String part) {
    return plan.part(part).map(p -> p.frame().thickness()).orElse(0.0);
  }

  /** Half the width that is drawn of a truss or rafter: nothing where it is one line. */
  double half(String part) {
    return twoFaces(thickness(part)) ? thickness(part) / 2 : 0;
  }

  private boolean twoFaces(double thickness) {
    return thickness >= TWO_FACES_MM * unitsPerMm;
  }

  /** One line, or both faces where the scale has room for them. */
  private Mark stick(Segment line, double thickness, Layer layer, String subject) {
    if (!twoFaces(thickness)) {
      return Mark.Path.line(line.from(), line.to(), layer, subject);
    }
    Point half = line.direction().left().times(thickness / 2);
    return new Mark.Path(
        List.of(
            line.from().minus(half),
            line.to().minus(half),
            line.to().plus(half),
            line.from().plus(half)),
        true,
        layer,
        subject);
  }

  /** A short stroke along the girder on the side of what it carries; its subject is the carried. */
  private List<Mark> hangers(Girder girder) {
    Truss carrier = trusses.get(girder.truss());
    Point along = carrier.to().minus(carrier.from()).unit();
    List<Mark> marks = new ArrayList<>();
    for (Girder.Hanger hanger : girder.hangers()) {
      Truss carried = trusses.get(hanger.carries());
      Point at = carrier.from().plus(along.times(hanger.along()));
      Point body = carried.from().toward(carried.to(), 0.5).minus(at);
      Point off = along.left().times(Math.signum(along.cross(body)) * HANGER_OFF_MM * unitsPerMm);
      Point half = along.times(HANGER_MM / 2 * unitsPerMm);
      Point middle = at.plus(off);
      marks.add(
          Mark.Path.line(
              middle.minus(half), middle.plus(half), FrameLayers.HANGER, hanger.carries()));
    }
    return marks;
  }

  private List<Mark> rafter(Rafter rafter) {
    List<Mark> marks = new ArrayList<>();
    for (Segment place : rafter.places()) {
      marks.add(
          stick(
              rafter.drawn(place), thickness(rafter.part()), FrameLayers.RAFTER, subject(rafter)));
    }
    return marks;
  }

  static String subject(Rafter rafter) {
    return rafter.run() + ":" + rafter.mark();
  }

  /** The fly rafter and every lookout; where the tail stands is read off the eave beside it. */
  private List<Mark> ladder(Ladder ladder) {
    Optional<Side> gable =
        plan.part(ladder.part()).stream()
            .flatMap(p -> plan.sides(p).stream())
            .filter(s -> s.id().equals(ladder.side()))
            .findFirst();
    Optional<Side> eave = gable.map(g -> eaveBeside(g, ladder.rake()));
    if (eave.isEmpty() || eave.get().kind() != EdgeKind.EAVE) {
      return List.of();
    }
    Segment wall = gable.get().wall();
    boolean left = ladder.rake() == Ladder.Rake.LEFT;
    Point up = left ? wall.direction() : wall.direction().times(-1);
    Point corner = left ? wall.from() : wall.to();
    Point tail = corner.minus(up.times(eave.get().overhang()));
    Point in = wall.direction().left();
    double level = Math.sin(Math.toRadians(ladder.plumbCut()));
    double fly = thickness(ladder.part());
    String subject = ladder.side();
    Point outside = tail.minus(in.times(ladder.overhang() - fly / 2));
    List<Mark> marks = new ArrayList<>();
    Segment board = new Segment(outside, outside.plus(up.times(ladder.rakeLength() * level)));
    marks.add(stick(board, fly, FrameLayers.LADDER, subject));
    for (double lookout : ladder.lookouts()) {
      double place = (lookout + ladder.lookoutWidth() / 2) * level;
      Point from = tail.minus(in.times(ladder.overhang() - fly)).plus(up.times(place));
      Segment line = new Segment(from, from.plus(in.times(ladder.lookoutLength())));
      marks.add(stick(line, ladder.lookoutWidth() * level, FrameLayers.LADDER, subject));
    }
    return marks;
  }

  /** Facing a wall from outside, the left hand is at its start. */
  private Side eaveBeside(Side gable, Ladder.Rake rake) {
    Part part = plan.part(gable.part()).orElseThrow();
    int outline = part.outline().size();
    int step = rake == Ladder.Rake.LEFT ? -1 : 1;
    return plan.side(part, Math.floorMod(gable.index() + step, outline));
  }
}
