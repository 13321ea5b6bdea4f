package longpoint.editor;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/**
 * What the user has picked.
 *
 * @param refs in the order picked, none twice
 */
public record Selection(List<Ref> refs) {
  public static final Selection NONE = new Selection(List.of());

  public Selection {
    refs = List.copyOf(new LinkedHashSet<>(refs));
  }

  public static Selection of(Ref... refs) {
    return new Selection(List.of(refs));
  }

  public boolean isEmpty() {
    return refs.isEmpty();
  }

  public boolean contains(Ref ref) {
    return refs.contains(ref);
  }

  /** With something added, or taken away if it was picked already. */
  public Selection toggled(Ref ref) {
    List<Ref> changed = new ArrayList<>(refs);
    if (!changed.remove(ref)) {
      changed.add(ref);
    }
    return new Selection(changed);
  }

  public Selection with(List<Ref> more) {
    return new Selection(Stream.concat(refs.stream(), more.stream()).toList());
  }

  /** Only what the plan still has. */
  public Selection within(Plan plan) {
    List<Ref> kept = refs.stream().filter(r -> r.in(plan)).toList();
    return kept.size() == refs.size() ? this : new Selection(kept);
  }

  /** Sides picked themselves, and every side of parts picked whole. */
  public List<Ref.OfSide> sides(Plan plan) {
    Set<Ref.OfSide> sides = new LinkedHashSet<>();
    for (Ref ref : within(plan).refs) {
      if (ref instanceof Ref.OfSide side) {
        sides.add(side);
      } else if (ref instanceof Ref.OfPart) {
        int count = plan.part(ref.part()).map(Part::sideCount).orElse(0);
        IntStream.range(0, count).forEach(i -> sides.add(new Ref.OfSide(ref.part(), i)));
      }
    }
    return List.copyOf(sides);
  }

  /** Ids of parts picked whole. */
  public List<String> parts() {
    return refs.stream().filter(Ref.OfPart.class::isInstance).map(Ref::part).toList();
  }

  /** Ids of parts picked whole or in some of their sides or corners. */
  public List<String> touchedParts() {
    return refs.stream().map(Ref::part).filter(p -> !p.isEmpty()).distinct().toList();
  }

  /** What was picked besides the building: notes, dimensions, the picture beneath. */
  public List<Ref> besides() {
    return refs.stream().filter(r -> r.part().isEmpty()).toList();
  }
}
