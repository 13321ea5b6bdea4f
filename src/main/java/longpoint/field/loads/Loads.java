package longpoint.field.loads;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longpoint.field.loads.BearingLoad.On;
import longpoint.framing.FramingSet;
import longpoint.plan.Handling;
import longpoint.plan.Plan;
import longpoint.stop.CalledOff;
import longpoint.surface.RoofSurface;
import longpoint.units.LengthUnit;

/**
 * Front door of this package: loads to pass on. Bearings are taken at the outside faces of walls,
 * as spans are. Weight of the framing itself is for the typed dead load; uplift, wind and
 * earthquake are not looked at. Never a design.
 *
 * @param roof the whole roof as an amount
 * @param force the same under the typed loads
 * @param walls by wall and stretch
 * @param points bearings of girders on walls
 * @param girders members that others hang on
 * @param others what does not end on a wall
 * @param bearings every single one
 */
public record Loads(
    Amount roof,
    Force force,
    List<WallLoad> walls,
    List<PointLoad> points,
    List<GirderLoad> girders,
    List<OtherLoad> others,
    List<BearingLoad> bearings) {
  public static final Loads NONE =
      new Loads(
          Amount.NONE,
          Force.of(Amount.NONE, Handling.Loads.NONE, LengthUnit.INCH),
          List.of(),
          List.of(),
          List.of(),
          List.of(),
          List.of());

  public Loads {
    walls = List.copyOf(walls);
    points = List.copyOf(points);
    girders = List.copyOf(girders);
    others = List.copyOf(others);
    bearings = List.copyOf(bearings);
  }

  /** Shares the roof out among its bearings. Never fails for what a user can draw. */
  public static Loads of(Plan plan, RoofSurface surface, FramingSet framing) {
    CalledOff.check();
    List<Member> members = Members.of(plan, framing);
    Chain chain = Chain.of(plan, surface, members);
    Summing sums = new Summing(plan.handling().loads(), plan.unit());
    Amount roof = Amount.NONE;
    for (BearingLoad b : chain.bearings()) {
      roof = roof.plus(b.reaction());
    }
    return new Loads(
        roof,
        sums.force(roof),
        WallSums.of(plan, chain.bearings(), members),
        sums.points(plan, chain.bearings()),
        sums.girders(chain, members),
        sums.others(chain.bearings()),
        chain.bearings());
  }

  private record Summing(Handling.Loads loads, LengthUnit unit) {
    Force force(Amount amount) {
      return Force.of(amount, loads, unit);
    }

    List<PointLoad> points(Plan plan, List<BearingLoad> bearings) {
      List<PointLoad> points = new ArrayList<>();
      for (BearingLoad b : bearings) {
        if (b.on() == On.WALL && b.carries() > 0) {
          points.add(
              new PointLoad(
                  b.member(),
                  b.mark(),
                  b.subject(),
                  WallSums.along(plan, b),
                  b.at(),
                  b.carries(),
                  b.area(),
                  b.reaction(),
                  force(b.reaction())));
        }
      }
      return points;
    }

    List<GirderLoad> girders(Chain chain, List<Member> members) {
      Map<String, List<Chain.Hung>> on = new LinkedHashMap<>();
      chain.hung().forEach(h -> on.computeIfAbsent(h.by(), id -> new ArrayList<>()).add(h));
      List<GirderLoad> girders = new ArrayList<>();
      for (Member m : members) {
        List<Chain.Hung> hung = on.getOrDefault(m.id(), List.of());
        if (!hung.isEmpty()) {
          Amount total = chain.total(m.id());
          girders.add(
              new GirderLoad(
                  m.id(),
                  m.mark(),
                  m.axis().length(),
                  chain.ground(m.id()),
                  total,
                  force(total),
                  hung.stream()
                      .sorted(Comparator.comparingDouble(Chain.Hung::along))
                      .map(
                          h ->
                              new GirderLoad.HangerLoad(
                                  h.member().id(),
                                  h.member().mark(),
                                  h.along(),
                                  h.reaction(),
                                  force(h.reaction())))
                      .toList()));
        }
      }
      return girders;
    }

    List<OtherLoad> others(List<BearingLoad> bearings) {
      Map<String, OtherLoad> others = new LinkedHashMap<>();
      for (BearingLoad b : bearings) {
        if (b.on() != On.WALL && b.on() != On.GABLE_WALL) {
          others.merge(
              b.on() + " " + b.subject(),
              new OtherLoad(b.on(), b.subject(), 1, b.area(), b.reaction(), force(b.reaction())),
              (x, y) -> {
                Amount both = x.reaction().plus(y.reaction());
                return new OtherLoad(
                    x.on(),
                    x.subject(),
                    x.bearings() + y.bearings(),
                    x.area() + y.area(),
                    both,
                    force(both));
              });
        }
      }
      return List.copyOf(others.values());
    }
  }
}
