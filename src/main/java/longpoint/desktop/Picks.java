package longpoint.desktop;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.desktop.canvas.PickListener;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.geometry.Point;
import longpoint.pipeline.Design;
import longpoint.plan.Plan;
import longpoint.plan.Side;

/**
 * What is picked, for every view alike: sides and parts of the plan, which are the editor's
 * selection, and beyond them things worked out from it, such as a truss, a piece or a chalk line.
 * Picking such a thing selects what it belongs to; selecting anything else lets go of it.
 */
public final class Picks {
  private final Job job;
  private final List<Runnable> listeners = new ArrayList<>();
  private Set<String> ids = Set.of();
  private Selection together = Selection.NONE;
  private Things things;
  private Design known;

  Picks(Job job) {
    this.job = job;
    job.runner().onChange(this::follow);
  }

  /** Called whenever something else is picked. */
  public void onChange(Runnable listener) {
    listeners.add(listener);
  }

  private void follow() {
    if (!job.document().selection().equals(together)) {
      together = job.document().selection();
      ids = Set.of();
      listeners.forEach(Runnable::run);
    }
  }

  /**
   * Picks what a mark shows.
   *
   * @param subject of the mark; empty, or one nobody knows, for nothing
   */
  public void pick(Optional<String> subject, PickListener.How how) {
    Plan plan = job.document().plan();
    Optional<Ref> ref = subject.flatMap(s -> Sight.ref(plan, s));
    Optional<Thing> thing = ref.isPresent() ? Optional.empty() : subject.flatMap(this::thing);
    Optional<Ref> home = thing.flatMap(Thing::home).filter(r -> r.in(plan));
    switch (how) {
      case ALONE -> set(thing, ref.or(() -> home).map(Selection::of).orElse(Selection.NONE));
      case TOO -> {
        Selection now = job.document().selection();
        set(thing, ref.map(now::toggled).orElse(now));
      }
      case WHOLE_PART -> {
        Optional<Ref> any = ref.or(() -> home);
        any.ifPresent(r -> set(thing, Selection.of(Ref.part(r.part()))));
      }
    }
  }

  /** Picks several rows of a list at once. */
  public void pickAll(List<String> subjects) {
    Plan plan = job.document().plan();
    Set<String> found = new HashSet<>();
    List<Ref> refs = new ArrayList<>();
    for (String subject : subjects) {
      Optional<Ref> ref = Sight.ref(plan, subject);
      Optional<Thing> thing = ref.isPresent() ? Optional.empty() : thing(subject);
      thing.ifPresent(t -> found.add(t.id()));
      ref.or(() -> thing.flatMap(Thing::home).filter(r -> r.in(plan))).ifPresent(refs::add);
    }
    set(found, new Selection(refs));
  }

  private void set(Optional<Thing> thing, Selection selection) {
    set(thing.map(t -> Set.of(t.id())).orElse(Set.of()), selection);
  }

  private void set(Set<String> ids, Selection selection) {
    this.ids = ids;
    together = selection;
    job.runner().select(selection);
    together = job.document().selection();
    listeners.forEach(Runnable::run);
  }

  /** Ids of sides, planes and things that stand out. */
  public Set<String> subjects() {
    Plan plan = job.document().plan();
    Set<String> subjects = new HashSet<>();
    List<Thing> picked = things();
    // A thing is picked rather than the whole part it belongs to.
    if (picked.isEmpty()) {
      for (Ref.OfSide side : job.document().selection().sides(plan)) {
        subjects.add(Side.id(side.part(), side.side()));
      }
    }
    for (Thing thing : picked) {
      subjects.add(thing.id());
      subjects.addAll(thing.alike());
    }
    return subjects;
  }

  /** The same, and whatever else the rows of lists tell of it by. */
  public Set<String> named() {
    Set<String> named = subjects();
    List<Thing> things = things();
    things.forEach(t -> named.addAll(t.rows()));
    if (things.isEmpty()) {
      job.document().selection().parts().forEach(named::add);
    }
    return named;
  }

  /** Things picked by themselves. */
  public List<Thing> things() {
    return ids.stream().sorted().flatMap(id -> thing(id).stream()).toList();
  }

  /** Sides picked themselves or with their part, in the order picked. */
  public List<String> planes() {
    return job.document().selection().sides(job.document().plan()).stream()
        .map(s -> Side.id(s.part(), s.side()))
        .toList();
  }

  /** Ids of the parts that anything picked belongs to. */
  public List<String> parts() {
    return job.document().selection().refs().stream().map(Ref::part).distinct().toList();
  }

  /** Where picked things stand in plan, as chains of points. */
  List<List<Point>> places() {
    return things().stream().flatMap(t -> t.places().stream()).toList();
  }

  private Optional<Thing> thing(String id) {
    Design design = job.picture().design();
    if (known != design) {
      known = design;
      things = Things.of(design);
    }
    return things.thing(id);
  }
}
