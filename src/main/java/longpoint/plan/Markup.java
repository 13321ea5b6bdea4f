package longpoint.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * What the user put on the sheet besides the building.
 *
 * @param notes in the order they were written
 * @param dimensions in the order they were placed
 * @param backdrop a picture beneath the plan, to trace
 */
public record Markup(
    List<Note> notes, List<PlanDimension> dimensions, Optional<Backdrop> backdrop) {
  public static final Markup NONE = new Markup(List.of(), List.of(), Optional.empty());

  public Markup {
    notes = List.copyOf(notes);
    dimensions = List.copyOf(dimensions);
    Objects.requireNonNull(backdrop);
  }

  public Optional<Note> note(String id) {
    return notes.stream().filter(n -> n.id().equals(id)).findFirst();
  }

  public Optional<PlanDimension> dimension(String id) {
    return dimensions.stream().filter(d -> d.id().equals(id)).findFirst();
  }

  public Markup withNotes(List<Note> notes) {
    return new Markup(notes, dimensions, backdrop);
  }

  public Markup withDimensions(List<PlanDimension> dimensions) {
    return new Markup(notes, dimensions, backdrop);
  }

  public Markup withBackdrop(Optional<Backdrop> backdrop) {
    return new Markup(notes, dimensions, backdrop);
  }

  /** With the note of the same id replaced, or one more note. */
  public Markup with(Note note) {
    List<Note> changed = new ArrayList<>(notes);
    changed.replaceAll(n -> n.id().equals(note.id()) ? note : n);
    if (note(note.id()).isEmpty()) {
      changed.add(note);
    }
    return withNotes(changed);
  }

  /** With the dimension of the same id replaced, or one more dimension. */
  public Markup with(PlanDimension dimension) {
    List<PlanDimension> changed = new ArrayList<>(dimensions);
    changed.replaceAll(d -> d.id().equals(dimension.id()) ? dimension : d);
    if (dimension(dimension.id()).isEmpty()) {
      changed.add(dimension);
    }
    return withDimensions(changed);
  }

  /** Without the note or dimension of an id. */
  public Markup without(String id) {
    return new Markup(
        notes.stream().filter(n -> !n.id().equals(id)).toList(),
        dimensions.stream().filter(d -> !d.id().equals(id)).toList(),
        backdrop);
  }

  /** The first of {@code stem}, {@code stem-2}, {@code stem-3}, … that nothing here has. */
  public String freshId(String stem) {
    Set<String> taken = new HashSet<>();
    notes.forEach(n -> taken.add(n.id()));
    dimensions.forEach(d -> taken.add(d.id()));
    String id = stem;
    for (int n = 2; taken.contains(id); n++) {
      id = stem + "-" + n;
    }
    return id;
  }

  /** With every end on a corner changed; a dimension goes when one of its ends becomes empty. */
  public Markup withCorners(Function<PlanDimension.Corner, Optional<PlanDimension.End>> edit) {
    List<PlanDimension> changed = new ArrayList<>();
    for (PlanDimension d : dimensions) {
      Optional<PlanDimension.End> from = edited(d.from(), edit);
      Optional<PlanDimension.End> to = edited(d.to(), edit);
      if (from.isPresent() && to.isPresent()) {
        changed.add(d.withEnds(from.get(), to.get()));
      }
    }
    return changed.equals(dimensions) ? this : withDimensions(changed);
  }

  private static Optional<PlanDimension.End> edited(
      PlanDimension.End end, Function<PlanDimension.Corner, Optional<PlanDimension.End>> edit) {
    return end instanceof PlanDimension.Corner corner ? edit.apply(corner) : Optional.of(end);
  }
}
