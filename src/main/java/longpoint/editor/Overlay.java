package longpoint.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import longpoint.geometry.Bounds;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/**
 * What is drawn over the plan while a tool is at work, in plan coordinates. Pens and lettering are
 * the window's business.
 *
 * @param lines rubber lines and guides
 * @param dimensions live lengths beside what is being drawn
 * @param handles places to take hold of
 * @param hover what a press would take hold of
 * @param snap where the pointer is held, and why
 * @param box the selection box
 */
public record Overlay(
    List<Line> lines,
    List<Dimension> dimensions,
    List<Handle> handles,
    Optional<Ref> hover,
    Optional<Snap> snap,
    Optional<Bounds> box) {
  public static final Overlay NONE =
      new Overlay(
          List.of(), List.of(), List.of(), Optional.empty(), Optional.empty(), Optional.empty());

  /** A line and what it is for. */
  public record Line(Segment at, Style style) {}

  /** What a line is for. */
  public enum Style {
    /** Part of what is being drawn. */
    RUBBER,
    /** Shows why the pointer is held. */
    GUIDE,
    /** The tape between two measured points. */
    TAPE
  }

  /** Words beside the line they measure, e.g. {@code 24'-3 1/2"}. */
  public record Dimension(Segment along, String text) {}

  /**
   * A place to take hold of.
   *
   * @param of what it moves; empty for a corner that is not in the plan yet
   */
  public record Handle(Point at, Optional<Ref> of) {}

  public Overlay {
    lines = List.copyOf(lines);
    dimensions = List.copyOf(dimensions);
    handles = List.copyOf(handles);
    Objects.requireNonNull(hover);
    Objects.requireNonNull(snap);
    Objects.requireNonNull(box);
  }

  public Overlay withLines(List<Line> lines) {
    return new Overlay(lines, dimensions, handles, hover, snap, box);
  }

  public Overlay withDimensions(List<Dimension> dimensions) {
    return new Overlay(lines, dimensions, handles, hover, snap, box);
  }

  public Overlay withHandles(List<Handle> handles) {
    return new Overlay(lines, dimensions, handles, hover, snap, box);
  }

  public Overlay withHover(Optional<Ref> hover) {
    return new Overlay(lines, dimensions, handles, hover, snap, box);
  }

  /** With the mark of a snap and its guides. */
  public Overlay withSnap(Optional<Snap> snap) {
    List<Line> all = new ArrayList<>(lines);
    snap.ifPresent(s -> s.guides().forEach(g -> all.add(new Line(g, Style.GUIDE))));
    return new Overlay(all, dimensions, handles, hover, snap, box);
  }

  public Overlay withBox(Bounds box) {
    return new Overlay(lines, dimensions, handles, hover, snap, Optional.of(box));
  }
}
