package longpoint.editor.tools;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import longpoint.editor.Ends;
import longpoint.editor.Ref;
import longpoint.geometry.Point;
import longpoint.geometry.Segment;
import longpoint.plan.Markup;
import longpoint.plan.Note;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension;

/** What of a note, a dimension or the picture is taken hold of, and where it goes. */
enum MarkupGrip {
  /** The words of a note. */
  WORDS {
    @Override
    Markup moved(Markup markup, Ref ref, Plan plan, Point from, Point to) {
      Note note = note(markup, ref);
      return markup.with(note.withAt(note.at().plus(to.minus(from))));
    }
  },
  /** What a note points at. */
  TIP {
    @Override
    Markup moved(Markup markup, Ref ref, Plan plan, Point from, Point to) {
      return markup.with(note(markup, ref).withPointsAt(Optional.of(to)));
    }
  },
  /** The dimension line. */
  LINE {
    @Override
    Markup moved(Markup markup, Ref ref, Plan plan, Point from, Point to) {
      PlanDimension d = dimension(markup, ref);
      Segment ends = d.ends(plan).orElseThrow();
      DimensionPlacing.Line line = DimensionPlacing.line(ends, to);
      return markup.with(d.withLine(line.along(), line.offset()));
    }
  },
  /** The first end of a dimension. */
  FROM {
    @Override
    Markup moved(Markup markup, Ref ref, Plan plan, Point from, Point to) {
      PlanDimension d = dimension(markup, ref);
      return markup.with(d.withEnds(Ends.at(plan, to), d.to()));
    }
  },
  /** The second end of a dimension. */
  TO {
    @Override
    Markup moved(Markup markup, Ref ref, Plan plan, Point from, Point to) {
      PlanDimension d = dimension(markup, ref);
      return markup.with(d.withEnds(d.from(), Ends.at(plan, to)));
    }
  },
  /** The picture beneath. */
  PICTURE {
    @Override
    Markup moved(Markup markup, Ref ref, Plan plan, Point from, Point to) {
      return markup.withBackdrop(markup.backdrop().map(u -> u.moved(to.minus(from))));
    }
  };

  /**
   * The markup with it moved.
   *
   * @param ref in the plan
   * @param from where it was taken hold of
   * @param to where the pointer is
   */
  abstract Markup moved(Markup markup, Ref ref, Plan plan, Point from, Point to);

  /** What the pointer takes hold of there. */
  static MarkupGrip of(Ref ref, Plan plan, Point at, double reach) {
    if (ref instanceof Ref.OfBackdrop) {
      return PICTURE;
    }
    MarkupGrip whole = ref instanceof Ref.OfNote ? WORDS : LINE;
    return handles(ref, plan).entrySet().stream()
        .filter(h -> h.getValue().distance(at) <= reach)
        .min(Comparator.comparingDouble(h -> h.getValue().distance(at)))
        .map(Map.Entry::getKey)
        .orElse(whole);
  }

  /** Whether one of its handles is within reach. */
  static boolean near(Ref ref, Plan plan, Point at, double reach) {
    return handles(ref, plan).values().stream().anyMatch(h -> h.distance(at) <= reach);
  }

  /** Where it may be taken hold of, besides anywhere else. */
  static Map<MarkupGrip, Point> handles(Ref ref, Plan plan) {
    Map<MarkupGrip, Point> handles = new TreeMap<>();
    if (ref instanceof Ref.OfNote n) {
      plan.markup().note(n.note()).ifPresent(note -> put(handles, note));
    } else if (ref instanceof Ref.OfDimension d) {
      Optional<PlanDimension> dimension = plan.markup().dimension(d.dimension());
      dimension.flatMap(m -> m.ends(plan)).ifPresent(ends -> put(handles, ends));
      dimension.flatMap(m -> m.line(plan)).ifPresent(line -> handles.put(LINE, line.middle()));
    }
    return handles;
  }

  private static void put(Map<MarkupGrip, Point> handles, Note note) {
    handles.put(WORDS, note.at());
    note.pointsAt().ifPresent(p -> handles.put(TIP, p));
  }

  private static void put(Map<MarkupGrip, Point> handles, Segment ends) {
    handles.put(FROM, ends.from());
    handles.put(TO, ends.to());
  }

  /** Words and pictures go freely; everything else goes where the pointer is held. */
  boolean snaps() {
    return List.of(TIP, FROM, TO).contains(this);
  }

  private static Note note(Markup markup, Ref ref) {
    return markup.note(((Ref.OfNote) ref).note()).orElseThrow();
  }

  private static PlanDimension dimension(Markup markup, Ref ref) {
    return markup.dimension(((Ref.OfDimension) ref).dimension()).orElseThrow();
  }
}
