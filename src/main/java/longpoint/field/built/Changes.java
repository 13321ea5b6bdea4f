package longpoint.field.built;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import longpoint.framing.FramingSet;
import longpoint.framing.edge.EdgeBoard;
import longpoint.framing.gable.Ladder;
import longpoint.framing.stick.Rafter;
import longpoint.framing.truss.RidgeBlocks;
import longpoint.framing.truss.TrussKind;
import longpoint.framing.truss.TrussMark;
import longpoint.framing.valley.ValleySet;
import longpoint.framing.valley.ValleyTruss;
import longpoint.geometry.Segment;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.surface.RoofLine;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/** Holds what was worked out for the walls as drawn against the same for the walls as built. */
final class Changes {
  /** What is worked out of a plan, as far as it is compared. */
  record Work(Plan plan, RoofSurface surface, FramingSet framing) {}

  private final Work planned;
  private final Work built;
  private final double least;
  private final List<Change> changes = new ArrayList<>();

  private Changes(Work planned, Work built) {
    this.planned = planned;
    this.built = built;
    // Half a mark of the tape: what would be read as the same figure is no change.
    this.least = planned.plan().unit().fromMillimetres(0.79375);
  }

  static List<Change> of(Work planned, Work built) {
    Changes all = new Changes(planned, built);
    all.walls();
    all.trusses();
    all.lines();
    all.rafters();
    all.ladders();
    all.blocks();
    all.valleys();
    all.fascia();
    all.areas();
    return List.copyOf(all.changes);
  }

  private void add(Change.Kind kind, String subject, int number, String mark, double a, double b) {
    if (Math.abs(b - a) > least) {
      changes.add(new Change(kind, subject, number, mark, a, b));
    }
  }

  private void walls() {
    for (Part part : planned.plan().parts()) {
      Part now = built.plan().part(part.id()).orElseThrow();
      for (int i = 0; i < part.sideCount(); i++) {
        add(
            Change.Kind.WALL,
            part.id() + "/" + i,
            0,
            "",
            part.side(i).length(),
            now.side(i).length());
      }
      add(Change.Kind.PLATE, part.id(), 0, "", part.plateHeight(), now.plateHeight());
    }
  }

  /** A truss is known by its place in the layout; its mark may be another one on other walls. */
  private void trusses() {
    Map<String, TrussMark> marks = new HashMap<>();
    built.framing().marks().forEach(m -> marks.put(m.mark(), m));
    Map<String, TrussMark> now = new HashMap<>();
    built
        .framing()
        .trusses()
        .forEach(t -> Optional.ofNullable(marks.get(t.mark())).ifPresent(m -> now.put(t.id(), m)));
    for (TrussMark mark : planned.framing().marks()) {
      List<TrussMark> same =
          planned.framing().trusses().stream()
              .filter(t -> t.mark().equals(mark.mark()))
              .flatMap(t -> Optional.ofNullable(now.get(t.id())).stream())
              .filter(m -> m.kind() == mark.kind())
              .toList();
      if (!same.isEmpty() && mark.kind() != TrussKind.VALLEY) {
        String name = mark.mark();
        double span = farthest(same.stream().map(TrussMark::span).toList(), mark.span());
        add(Change.Kind.TRUSS_SPAN, name, 0, name, mark.span(), span);
        double height = farthest(same.stream().map(TrussMark::height).toList(), mark.height());
        add(Change.Kind.TRUSS_HEIGHT, name, 0, name, mark.height(), height);
      }
    }
  }

  private static double farthest(List<Double> all, double from) {
    double far = from;
    for (double one : all) {
      far = Math.abs(one - from) > Math.abs(far - from) ? one : far;
    }
    return far;
  }

  private void lines() {
    Map<String, RoofLine> now = new HashMap<>();
    built.surface().lines().forEach(l -> now.put(l.id(), l));
    for (RoofLine line : planned.surface().lines()) {
      RoofLine other = now.get(line.id());
      if (other != null) {
        add(Change.Kind.LINE, line.id(), 0, "", line.length(), other.length());
      }
    }
  }

  /** A rafter's piece on the other walls is the one of its kind whose line lies nearest. */
  private void rafters() {
    for (Rafter rafter : planned.framing().rafters()) {
      double far = rafter.length();
      for (Segment place : rafter.places()) {
        Optional<Rafter> other = nearest(rafter, place);
        if (other.isPresent()) {
          far = farthest(List.of(far, other.get().length()), rafter.length());
        }
      }
      add(Change.Kind.RAFTER, rafter.part(), 0, rafter.mark(), rafter.length(), far);
    }
  }

  private Optional<Rafter> nearest(Rafter rafter, Segment place) {
    Optional<Rafter> best = Optional.empty();
    double least = rafter.thickness() * 2;
    for (Rafter other : built.framing().rafters()) {
      if (other.kind() == rafter.kind() && other.part().equals(rafter.part())) {
        for (Segment there : other.places()) {
          double off = there.middle().distance(place.middle());
          if (off < least) {
            least = off;
            best = Optional.of(other);
          }
        }
      }
    }
    return best;
  }

  private void ladders() {
    Map<String, Ladder> now = new HashMap<>();
    built.framing().ladders().forEach(l -> now.put(l.side() + l.rake(), l));
    for (Ladder l : planned.framing().ladders()) {
      Ladder other = now.get(l.side() + l.rake());
      if (other != null) {
        int rake = l.rake().ordinal() + 1;
        add(Change.Kind.FLY_RAFTER, l.side(), rake, "", l.rakeLength(), other.rakeLength());
        add(Change.Kind.LOOKOUT, l.side(), rake, "", l.lookoutLength(), other.lookoutLength());
      }
    }
  }

  private void blocks() {
    Map<String, List<RidgeBlocks>> then = grouped(planned);
    Map<String, List<RidgeBlocks>> now = grouped(built);
    then.forEach(
        (row, blocks) -> {
          List<RidgeBlocks> others = now.getOrDefault(row, List.of());
          for (int i = 0; i < Math.min(blocks.size(), others.size()); i++) {
            add(
                Change.Kind.BLOCK,
                blocks.get(i).run(),
                i + 1,
                "",
                blocks.get(i).length(),
                others.get(i).length());
          }
        });
  }

  private static Map<String, List<RidgeBlocks>> grouped(Work work) {
    Map<String, List<RidgeBlocks>> rows = new LinkedHashMap<>();
    for (RidgeBlocks b : work.framing().ridgeBlocks()) {
      rows.computeIfAbsent(b.run() + " " + b.place(), r -> new ArrayList<>()).add(b);
    }
    return rows;
  }

  private void valleys() {
    for (ValleySet set : planned.framing().valleySets()) {
      built.framing().valleySets().stream()
          .filter(s -> s.upper().equals(set.upper()) && s.plane().equals(set.plane()))
          .findFirst()
          .ifPresent(now -> valley(set, now));
    }
  }

  private void valley(ValleySet set, ValleySet now) {
    for (ValleyTruss truss : set.trusses()) {
      for (ValleyTruss other : now.trusses()) {
        if (truss.number() == other.number()) {
          int n = truss.number();
          add(Change.Kind.VALLEY_PLACE, set.upper(), n, "", truss.x(), other.x());
          add(Change.Kind.VALLEY_CHORD, set.upper(), n, "", truss.length(), other.length());
        }
      }
    }
  }

  private void fascia() {
    Map<String, EdgeBoard> now = new HashMap<>();
    built.framing().fascia().forEach(b -> now.put(b.line(), b));
    for (EdgeBoard board : planned.framing().fascia()) {
      EdgeBoard other = now.get(board.line());
      if (other != null) {
        add(Change.Kind.FASCIA, board.line(), 0, "", board.length(), other.length());
      }
    }
  }

  private void areas() {
    Map<String, RoofPlane> now = new HashMap<>();
    built.surface().planes().forEach(p -> now.put(p.id(), p));
    for (RoofPlane plane : planned.surface().planes()) {
      RoofPlane other = now.get(plane.id());
      // A square mark for every mark's length of edge would be too fine: a hundredth counts.
      if (other != null && Math.abs(other.area() / plane.area() - 1) > 0.001) {
        changes.add(new Change(Change.Kind.AREA, plane.id(), 0, "", plane.area(), other.area()));
      }
    }
  }
}
