package longpoint.desktop.view;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import longpoint.desktop.solid.SolidLayer;
import longpoint.pipeline.Design;
import longpoint.plan.Join;
import longpoint.plan.Plan;
import longpoint.sheets.solid.RoofSolid;
import longpoint.surface.Roof;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;

/**
 * The house with only some of its parts. A roof that another is laid over goes on beneath it: when
 * the upper one is hidden, the lower is shown as it is without it, whole.
 */
final class ShownHouse {
  private final Design design;
  private final Set<String> hidden;
  private final Set<String> bared = new HashSet<>();
  private final Map<String, String> parts;

  private ShownHouse(Design design, Set<String> hidden) {
    this.design = design;
    this.hidden = hidden;
    this.parts =
        design.surface().planes().stream()
            .collect(Collectors.toMap(RoofPlane::id, RoofPlane::part, (a, b) -> a));
    for (Join join : design.plan().joins()) {
      if (hidden.contains(join.upper()) && !hidden.contains(join.lower())) {
        bared.add(join.lower());
      }
    }
  }

  /**
   * The house as it is to be seen.
   *
   * @param hidden ids of the parts left off
   * @param layers what is shown of the rest
   */
  static RoofSolid of(Design design, Set<String> hidden, Set<SolidLayer> layers) {
    ShownHouse shown = new ShownHouse(design, hidden);
    RoofSolid house = hidden.isEmpty() ? shown.whole() : shown.some();
    if (layers.contains(SolidLayer.FRAME)) {
      house = house.with(design.framing(), design.surface());
    }
    if (layers.contains(SolidLayer.DECK)) {
      house = house.with(design.deck());
    }
    if (hidden.isEmpty()) {
      return house;
    }
    Set<String> gone = shown.gone();
    return house.keeping(s -> !gone.contains(s));
  }

  private RoofSolid whole() {
    return RoofSolid.of(design.plan(), design.surface());
  }

  /** Bared parts from a plan without the hidden ones, the others as they are. */
  private RoofSolid some() {
    if (bared.isEmpty()) {
      return whole();
    }
    Plan plan = design.plan();
    for (String part : hidden) {
      plan = plan.withoutPart(part);
    }
    var surface = Roof.solve(plan);
    Set<String> touched = new HashSet<>();
    surface.lines().stream().filter(this::touchesBared).map(RoofLine::id).forEach(touched::add);
    design.surface().lines().stream()
        .filter(this::touchesBared)
        .map(RoofLine::id)
        .forEach(touched::add);
    design.surface().planes().stream()
        .filter(p -> bared.contains(p.part()))
        .map(RoofPlane::id)
        .forEach(touched::add);
    for (String part : bared) {
      plan.part(part).ifPresent(p -> design.plan().sides(p).forEach(s -> touched.add(s.id())));
    }
    return whole()
        .keeping(s -> !touched.contains(s))
        .and(RoofSolid.of(plan, surface).keeping(touched::contains));
  }

  private boolean touchesBared(RoofLine line) {
    return line.planes().stream().anyMatch(p -> bared.contains(parts.get(p)));
  }

  /** Everything that belongs to hidden parts alone. */
  private Set<String> gone() {
    Set<String> gone = new HashSet<>();
    design.plan().parts().stream()
        .filter(p -> hidden.contains(p.id()))
        .flatMap(p -> design.plan().sides(p).stream())
        .forEach(s -> gone.add(s.id()));
    design.surface().lines().stream()
        .filter(l -> gone.containsAll(l.planes()))
        .forEach(l -> gone.add(l.id()));
    design.framing().trusses().stream()
        .filter(t -> hidden.contains(t.part()))
        .forEach(t -> gone.add(t.id()));
    design.framing().rafters().stream()
        .filter(r -> hidden.contains(r.part()))
        .forEach(r -> gone.add(r.mark()));
    design.deck().planes().stream()
        .filter(d -> gone.contains(d.plane()))
        .flatMap(d -> d.pieces().stream())
        .forEach(p -> gone.add(p.id()));
    return gone;
  }
}
