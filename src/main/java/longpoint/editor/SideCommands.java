package longpoint.editor;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import longpoint.plan.Attached;
import longpoint.plan.Deck;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.InLine;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Reshape;
import longpoint.plan.Side;
import longpoint.units.Slope;
import longpoint.units.SlopeText;

/**
 * Edits of sides as panels and menus make them. Several sides change at once; a side that the plan
 * does not have any more is passed over. The plan given at the start only names things.
 */
public final class SideCommands {
  private SideCommands() {}

  /** Sets what the roof does along sides. */
  public static Command kind(Plan plan, List<Ref.OfSide> sides, EdgeKind kind) {
    String name =
        Messages.text("do.kind", Naming.sides(plan, sides), Messages.text("edge." + kind.key()));
    return edges(name, sides, e -> e.withKind(kind));
  }

  /** Sets the slope of sides; empty lets them follow the plan's default. */
  public static Command slope(Plan plan, List<Ref.OfSide> sides, Optional<Slope> slope) {
    String figure = Naming.orDefault(slope.map(SlopeText::of));
    return edges(
        Messages.text("do.slope", Naming.sides(plan, sides), figure),
        sides,
        e -> e.withSlope(slope));
  }

  /**
   * Sets the overhang of sides; empty lets them follow the plan's default.
   *
   * @param overhang ≥ 0
   */
  public static Command overhang(Plan plan, List<Ref.OfSide> sides, Optional<Double> overhang) {
    String figure = Naming.orDefault(overhang.map(o -> Naming.length(plan, o)));
    return edges(
        Messages.text("do.overhang", Naming.sides(plan, sides), figure),
        sides,
        e -> e.withOverhang(overhang));
  }

  /**
   * Sets the heel of sides; empty lets them follow the plan's default.
   *
   * @param heel ≥ 0
   */
  public static Command heel(Plan plan, List<Ref.OfSide> sides, Optional<Double> heel) {
    String figure = Naming.orDefault(heel.map(h -> Naming.length(plan, h)));
    return edges(
        Messages.text("do.heel", Naming.sides(plan, sides), figure), sides, e -> e.withHeel(heel));
  }

  /** Sets how eaves at the end of a run of trusses are framed. */
  public static Command hip(Plan plan, List<Ref.OfSide> sides, Edge.HipEnd hip) {
    return edges(Messages.text("do.hip", Naming.sides(plan, sides)), sides, e -> e.withHip(hip));
  }

  /**
   * Sets whether the planes over sides go on where they come into line with a parallel wall's of
   * another slope; empty leaves it to the longer wall line.
   */
  public static Command inLine(Plan plan, List<Ref.OfSide> sides, Optional<InLine> inLine) {
    String what = Messages.text("inline." + inLine.map(InLine::key).orElse("by-length"));
    return edges(
        Messages.text("do.inline", Naming.sides(plan, sides), what),
        sides,
        e -> e.withInLine(inLine));
  }

  /** Sets where the sheets of sides' planes begin; empty lets them follow their parts. */
  public static Command sheetStart(Plan plan, List<Ref.OfSide> sides, Optional<Deck.Start> start) {
    return edges(
        Messages.text("do.sheetStart", Naming.sides(plan, sides)), sides, e -> e.withStart(start));
  }

  /** Sets how wide the first course over sides is; empty lets them follow their parts. */
  public static Command firstCourse(Plan plan, List<Ref.OfSide> sides, Optional<Double> width) {
    String figure = Naming.orDefault(width.map(w -> Naming.length(plan, w)));
    return edges(
        Messages.text("do.firstCourse", Naming.sides(plan, sides), figure),
        sides,
        e -> e.withFirstCourse(width));
  }

  /**
   * Gives a side a length; the wall at the end that gives way moves parallel to itself, and what
   * stands against it goes along.
   *
   * @param length &gt; 0; refused otherwise
   */
  public static Command length(Plan plan, Ref.OfSide side, double length, Reshape.End givesWay) {
    return length(
        plan, side, length, part -> Reshape.sideLength(part, side.side(), length, givesWay));
  }

  /** As {@link #length(Plan, Ref.OfSide, double, Reshape.End)}, for either end or both. */
  public static Command length(Plan plan, Ref.OfSide side, double length, GivesWay givesWay) {
    return switch (givesWay) {
      case START -> length(plan, side, length, Reshape.End.START);
      case FINISH -> length(plan, side, length, Reshape.End.FINISH);
      case BOTH -> lengthBothWays(plan, side, length);
    };
  }

  /** As {@link #length(Plan, Ref.OfSide, double, Reshape.End)}, both ends giving way by half. */
  public static Command lengthBothWays(Plan plan, Ref.OfSide side, double length) {
    return length(
        plan, side, length, part -> Reshape.sideLengthBothWays(part, side.side(), length));
  }

  private static Command length(
      Plan plan, Ref.OfSide side, double length, Function<Part, Optional<Part>> reshape) {
    String name =
        Messages.text("do.length", Naming.sides(plan, List.of(side)), Naming.length(plan, length));
    return now ->
        onPart(side, now)
            .map(
                part ->
                    reshape
                        .apply(part)
                        .map(p -> Command.of(name, plain -> Attached.follow(plain, p)).on(now))
                        .orElse(new Outcome.Refuse(Messages.text("refuse.shape"))))
            .orElse(Outcome.NONE);
  }

  /**
   * Moves a side parallel to itself, and what stands against it along.
   *
   * @param outward away from the inside of its part; negative moves inward
   */
  public static Command pull(
      Plan plan, Ref.OfSide side, double outward, Reshape.Neighbours neighbours) {
    String name =
        Messages.text("do.pull", Naming.sides(plan, List.of(side)), Naming.length(plan, outward));
    return now ->
        onPart(side, now)
            .filter(part -> part.side(side.side()).length() > 0)
            .map(
                part ->
                    Reshape.moveSide(part, side.side(), outward, neighbours)
                        .map(
                            p ->
                                Command.of(
                                        name,
                                        plain ->
                                            Attached.carry(
                                                plain,
                                                plain.withPart(p),
                                                part.id(),
                                                part.side(side.side()),
                                                outward))
                                    .on(now))
                        .orElse(new Outcome.Refuse(Messages.text("refuse.shape"))))
            .orElse(Outcome.NONE);
  }

  /** Puts a corner on the middle of a side. */
  public static Command split(Plan plan, Ref.OfSide side) {
    String name = Messages.text("corner.done", Naming.sides(plan, List.of(side)));
    return now ->
        onPart(side, now)
            .flatMap(p -> Reshape.insertCorner(p, side.side(), p.side(side.side()).middle()))
            .<Outcome>map(p -> new Outcome.Commit(name, now.withPart(p)))
            .orElse(new Outcome.Refuse(Messages.text("refuse.shape")));
  }

  /** What is changed so that two fascias run level. */
  public enum LevelBy {
    OVERHANG,
    HEEL
  }

  /**
   * Brings the fascia of an eave to the height of another's, by its overhang or by its heel. The
   * top outer edge of a fascia lies at plate + heel − slope · (overhang + fascia).
   */
  public static Command levelFascia(Plan plan, Ref.OfSide side, Ref.OfSide like, LevelBy by) {
    String name =
        Messages.text(
            "do.level", Naming.sides(plan, List.of(side)), Naming.sides(plan, List.of(like)));
    return now ->
        onPart(side, now).isPresent() && onPart(like, now).isPresent()
            ? level(name, side, like, by, now)
            : Outcome.NONE;
  }

  private static Outcome level(
      String name, Ref.OfSide ref, Ref.OfSide like, LevelBy by, Plan plan) {
    Side side = resolved(ref, plan);
    Side model = resolved(like, plan);
    if (side.kind() != EdgeKind.EAVE || model.kind() != EdgeKind.EAVE) {
      return new Outcome.Refuse(Messages.text("level.eaves"));
    }
    double height = model.plateHeight() + model.heel() - model.slope().ratio() * model.reach();
    double slope = side.slope().ratio();
    return switch (by) {
      case OVERHANG -> {
        double drop = side.plateHeight() + side.heel() - height;
        boolean reaches = slope > 0 && drop / slope >= side.fascia();
        yield reaches
            ? edges(name, List.of(ref), e -> e.withOverhang(drop / slope - side.fascia())).on(plan)
            : new Outcome.Refuse(Messages.text("level.overhang"));
      }
      case HEEL -> {
        double heel = height - side.plateHeight() + slope * side.reach();
        yield heel >= 0
            ? edges(name, List.of(ref), e -> e.withHeel(heel)).on(plan)
            : new Outcome.Refuse(Messages.text("level.heel"));
      }
    };
  }

  private static Side resolved(Ref.OfSide ref, Plan plan) {
    return plan.side(plan.part(ref.part()).orElseThrow(), ref.side());
  }

  private static Optional<Part> onPart(Ref.OfSide side, Plan plan) {
    return side.in(plan) ? plan.part(side.part()) : Optional.empty();
  }

  private static Command edges(String name, List<Ref.OfSide> sides, UnaryOperator<Edge> edit) {
    return Command.of(
        name,
        plan -> {
          Plan changed = plan;
          for (Ref.OfSide side : sides) {
            if (side.in(changed)) {
              Part part = changed.part(side.part()).orElseThrow();
              Edge edge = edit.apply(part.edges().get(side.side()));
              changed = changed.withPart(part.withEdge(side.side(), edge));
            }
          }
          return changed;
        });
  }
}
