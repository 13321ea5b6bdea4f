package longpoint.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Attached;
import longpoint.plan.Carried;
import longpoint.plan.Deck;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Frame;
import longpoint.plan.Join;
import longpoint.plan.Motion;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Reshape;
import longpoint.units.LengthChange;

/**
 * Edits of whole parts as panels, menus and tools make them. Parts are given by id; one that the
 * plan does not have any more is passed over. The plan given at the start names things and says
 * which additions stand against a part: they are moved, turned and mirrored with it.
 */
public final class PartCommands {
  private PartCommands() {}

  /** Sets the top of the wall plate above the datum. */
  public static Command plateHeight(Plan plan, List<String> parts, double height) {
    String name = Messages.text("do.plate", Naming.parts(plan, parts), Naming.length(plan, height));
    return parts(name, parts, p -> p.withPlateHeight(height));
  }

  /** Sets the top of the wall plate, or raises or lowers that of each part. */
  public static Command plateHeight(Plan plan, List<String> parts, LengthChange change) {
    if (change.kind() == LengthChange.Kind.TO) {
      return plateHeight(plan, parts, change.length());
    }
    String key = change.length() < 0 ? "do.plate.lower" : "do.plate.raise";
    String by = Naming.length(plan, Math.abs(change.length()));
    return parts(
        Messages.text(key, Naming.parts(plan, parts), by),
        parts,
        p -> p.withPlateHeight(change.from(p.plateHeight())));
  }

  /**
   * Sets the plates of parts from that of the first of them.
   *
   * @param above how much higher than the first the others are; negative is lower
   */
  public static Command platesAbove(Plan plan, List<String> parts, double above) {
    double first = plan.part(parts.get(0)).map(Part::plateHeight).orElse(0.0);
    return plateHeight(plan, parts.subList(1, parts.size()), first + above);
  }

  public static Command rename(String part, String newName) {
    return parts(Messages.text("do.rename", newName), List.of(part), p -> p.withName(newName));
  }

  /** Marks parts as standing already. */
  public static Command markExisting(Plan plan, List<String> parts) {
    String name = Messages.text("do.existing", Naming.parts(plan, parts));
    return parts(name, parts, p -> p.withExisting(true));
  }

  /** Marks parts as yet to be built. */
  public static Command markNew(Plan plan, List<String> parts) {
    String name = Messages.text("do.new", Naming.parts(plan, parts));
    return parts(name, parts, p -> p.withExisting(false));
  }

  /** Changes how parts are framed. */
  public static Command frame(Plan plan, List<String> parts, UnaryOperator<Frame> edit) {
    String name = Messages.text("do.frame", Naming.parts(plan, parts));
    return parts(name, parts, p -> p.withFrame(edit.apply(p.frame())));
  }

  /**
   * Sets the spacing of trusses or rafters.
   *
   * @param spacing centre to centre, &gt; 0
   */
  public static Command spacing(Plan plan, List<String> parts, double spacing) {
    return frame(plan, parts, f -> f.withSpacing(spacing));
  }

  /** Changes how parts are sheathed. */
  public static Command deck(Plan plan, List<String> parts, UnaryOperator<Deck> edit) {
    String name = Messages.text("do.deck", Naming.parts(plan, parts));
    return parts(name, parts, p -> p.withDeck(edit.apply(p.deck())));
  }

  /** Moves parts by a step. */
  public static Command move(Plan plan, List<String> parts, Point by) {
    return motion("do.move", plan, parts, Motion.shift(by));
  }

  /** What undo calls moving parts. */
  public static String moveName(Plan plan, List<String> parts) {
    return Messages.text("do.move", Naming.parts(plan, parts));
  }

  /** Turns parts about a point, counter-clockwise. */
  public static Command turn(Plan plan, List<String> parts, Point about, double degrees) {
    return motion("do.turn", plan, parts, Motion.turn(about, degrees));
  }

  /** Turns parts by a quarter to the left, about the middle of them all. */
  public static Command quarterLeft(Plan plan, List<String> parts) {
    return turn(plan, parts, middle(plan, parts), 90);
  }

  /** Turns parts by a quarter to the right, about the middle of them all. */
  public static Command quarterRight(Plan plan, List<String> parts) {
    return turn(plan, parts, middle(plan, parts), -90);
  }

  /**
   * Turns parts over to their mirror image.
   *
   * @param line from two different points
   */
  public static Command mirror(Plan plan, List<String> parts, Segment line) {
    return motion("do.mirror", plan, parts, Motion.mirror(line));
  }

  /** Mirrors parts left to right, about the middle of them all. */
  public static Command mirrorAcross(Plan plan, List<String> parts) {
    Point middle = middle(plan, parts);
    return mirror(plan, parts, new Segment(middle, middle.plus(new Point(0, 1))));
  }

  /** Mirrors parts top to bottom, about the middle of them all. */
  public static Command mirrorUp(Plan plan, List<String> parts) {
    Point middle = middle(plan, parts);
    return mirror(plan, parts, new Segment(middle, middle.plus(new Point(1, 0))));
  }

  /** Adds copies of parts, moved somewhere, with the joins that the parts have among themselves. */
  public static Command copy(Plan plan, List<String> parts, Motion to) {
    return Command.of(
        Messages.text("do.copy", Naming.parts(plan, parts)), now -> Copies.add(now, parts, to));
  }

  /**
   * Adds a part for each piece of ground, every side an eave.
   *
   * @param from what they come from, for undo
   */
  public static Command add(List<Region> grounds, String from) {
    return Command.of(
        Messages.text("do.add", from),
        plan -> {
          Plan with = plan;
          for (Region ground : grounds) {
            Part part = NewPart.hipped(with, NewPart.stem(with), ground.shell());
            for (Ring hole : ground.holes()) {
              part = Reshape.addHole(part, hole, Edge.of(EdgeKind.EAVE));
            }
            with = with.withPart(part);
          }
          return with;
        });
  }

  /** Takes parts away, and the joins that named them. */
  public static Command delete(Plan plan, List<String> parts) {
    return Command.of(
        Messages.text("do.delete", Naming.parts(plan, parts)),
        now -> {
          Plan rest = now;
          for (String part : parts) {
            rest = rest.withoutPart(part);
          }
          return rest;
        });
  }

  /** Adds a join, or changes the one between the same two parts. */
  public static Command join(Join join) {
    return Command.of(
        Messages.text("do.join"),
        plan -> {
          List<Join> joins = new ArrayList<>(plan.joins());
          joins.removeIf(j -> j.upper().equals(join.upper()) && j.lower().equals(join.lower()));
          joins.add(join);
          return plan.withJoins(joins);
        });
  }

  public static Command removeJoin(Join join) {
    return Command.of(
        Messages.text("do.unjoin"),
        plan -> plan.withJoins(plan.joins().stream().filter(j -> !j.equals(join)).toList()));
  }

  private static Point middle(Plan plan, List<String> parts) {
    Bounds box = Bounds.EMPTY;
    for (String part : parts) {
      box = plan.part(part).map(Part::outline).map(o -> o.bounds()).orElse(Bounds.EMPTY).with(box);
    }
    return box.isEmpty() ? new Point(0, 0) : box.middle();
  }

  private static Command motion(String key, Plan plan, List<String> parts, Motion motion) {
    List<String> moving = Attached.with(plan, parts);
    return Command.of(
        Messages.text(key, Naming.parts(plan, parts)), now -> Carried.by(motion, now, moving));
  }

  private static Command parts(String name, List<String> ids, UnaryOperator<Part> edit) {
    return Command.of(
        name,
        plan ->
            plan.withParts(
                plan.parts().stream().map(p -> ids.contains(p.id()) ? edit.apply(p) : p).toList()));
  }
}
