package longpoint.deck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import longpoint.geometry.Bounds;
import longpoint.geometry.Overlay;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;

/** What has to hold for every deck whatever the roof. */
public final class DeckLaws {
  private static final double SHARE = 1e-9;

  private DeckLaws() {}

  public static void check(DeckPlan plan) {
    for (PlaneDeck plane : plan.planes()) {
      tiles(plane);
      staysOnTheModule(plane);
    }
    cutsEveryPieceOnce(plan);
    for (Stock stock : plan.stock()) {
      assertThat(stock.bought())
          .as("sheets against bound")
          .isGreaterThanOrEqualTo(stock.lowerBound());
    }
  }

  /** Pieces add up to the ground, cover it, and so cannot overlap. */
  private static void tiles(PlaneDeck plane) {
    if (plane.pieces().isEmpty()) {
      return;
    }
    double sum = plane.pieces().stream().mapToDouble(Piece::area).sum();
    assertThat(sum).isCloseTo(plane.area(), within(SHARE * plane.area()));
    List<Region> all = plane.pieces().stream().map(Piece::outline).toList();
    double united = Overlay.union(all).stream().mapToDouble(Region::area).sum();
    assertThat(united).isCloseTo(plane.area(), within(SHARE * plane.area()));
    double outside = Overlay.minus(all, plane.ground()).stream().mapToDouble(Region::area).sum();
    assertThat(outside).isLessThan(SHARE * plane.area());
  }

  private static void staysOnTheModule(PlaneDeck plane) {
    Panel panel = plane.panel();
    for (Piece piece : plane.pieces()) {
      assertThat(piece.length()).isLessThanOrEqualTo(panel.length() + 1e-6);
      assertThat(piece.width()).isLessThanOrEqualTo(panel.width() + panel.sliver() + 1e-6);
      assertThat(piece.bounds().minY()).isGreaterThanOrEqualTo(course(plane, piece).from() - 1e-6);
    }
  }

  private static Course course(PlaneDeck plane, Piece piece) {
    return plane.courses().stream()
        .filter(c -> c.number() == piece.course())
        .findFirst()
        .orElseThrow();
  }

  /** Joints stand on supports, at least half a sheet's width from those of the course below. */
  public static void keepsTheRulesForJoints(PlaneDeck plane) {
    List<Double> below = List.of();
    for (Course course : plane.courses()) {
      for (double joint : course.joints()) {
        assertThat(plane.supports())
            .as("support under the joint at %s of course %s", joint, course.number())
            .anyMatch(s -> Math.abs(s.line().middle().x() - joint) < 1e-6);
        for (double other : below) {
          assertThat(Math.abs(other - joint)).isGreaterThanOrEqualTo(plane.panel().apart() - 1e-6);
        }
      }
      below = course.joints();
    }
    for (Piece piece : plane.pieces()) {
      for (PieceEdge edge : piece.edges()) {
        if (edge.use() == PieceEdge.Use.JOINT && edge.length() > plane.panel().sliver()) {
          Course course = course(plane, piece);
          assertThat(course.joints()).anyMatch(j -> Math.abs(j - edge.line().middle().x()) < 1e-6);
          for (Segment shared : shared(plane, piece, edge.line())) {
            carried(plane, shared);
          }
        }
      }
    }
  }

  /** Where two pieces of a course meet: a side may run on along the plane's own edge. */
  private static List<Segment> shared(PlaneDeck plane, Piece piece, Segment side) {
    List<Segment> shared = new ArrayList<>();
    for (Piece other : plane.pieces()) {
      for (PieceEdge edge : other.edges()) {
        Segment its = edge.line();
        boolean beside = Math.abs(its.middle().x() - side.middle().x()) < 1e-6;
        if (other != piece
            && other.course() == piece.course()
            && edge.use() == PieceEdge.Use.JOINT
            && beside) {
          double low = Math.max(low(side), low(its));
          double high = Math.min(high(side), high(its));
          if (high - low > plane.panel().sliver()) {
            double u = side.middle().x();
            shared.add(new Segment(new Point(u, low), new Point(u, high)));
          }
        }
      }
    }
    return shared;
  }

  private static double low(Segment s) {
    return Math.min(s.from().y(), s.to().y());
  }

  private static double high(Segment s) {
    return Math.max(s.from().y(), s.to().y());
  }

  /**
   * An end joint lies on centre lines of supports over its whole length, but for an eighth of a
   * sheet's width at an end or a gap, which the fascia, a hip or a ridge carries.
   */
  private static void carried(PlaneDeck plane, Segment joint) {
    double u = joint.middle().x();
    double from = joint.from().y();
    double to = joint.to().y();
    double beyond = plane.panel().width() / 8 + 1e-6;
    double reached = from;
    for (boolean more = true; more && reached < to; ) {
      more = false;
      for (Support support : plane.supports()) {
        double low = low(support.line());
        double high = high(support.line()) + beyond;
        double off = Math.abs(support.line().middle().x() - u);
        if (off < 1e-6 && low - beyond <= reached && high > reached) {
          reached = high;
          more = true;
        }
      }
    }
    assertThat(reached)
        .as("support up to %s under the joint at %s", to, u)
        .isGreaterThanOrEqualTo(to);
  }

  /** Every piece comes out of one sheet, inside it, clear of the others, not flipped over. */
  private static void cutsEveryPieceOnce(DeckPlan plan) {
    Map<String, Piece> left = new HashMap<>();
    plan.planes().forEach(p -> p.pieces().forEach(q -> left.put(q.id(), q)));
    for (Stock stock : plan.stock()) {
      Bounds sheet = new Bounds(0, 0, stock.panel().length(), stock.panel().width());
      for (CutSheet cut : stock.sheets()) {
        for (CutSheet.Placed placed : cut.pieces()) {
          Piece piece = left.remove(placed.piece());
          assertThat(piece).as("piece %s is cut once", placed.piece()).isNotNull();
          assertThat(placed.cut()).isEqualTo(piece.cut());
          congruent(piece.outline().shell(), placed);
          Bounds box = placed.outline().shell().bounds();
          double over = stock.panel().sliver() + 1e-6;
          assertThat(box.minX()).isGreaterThanOrEqualTo(-1e-6);
          assertThat(box.minY()).isGreaterThanOrEqualTo(-1e-6);
          assertThat(box.maxX()).isLessThanOrEqualTo(sheet.maxX() + 1e-6);
          assertThat(box.maxY()).isLessThanOrEqualTo(sheet.maxY() + over);
        }
        clearOfEachOther(cut);
      }
    }
    assertThat(left).isEmpty();
  }

  private static void congruent(Ring own, CutSheet.Placed placed) {
    int way = placed.turned() ? -1 : 1;
    Ring there = placed.outline().shell();
    assertThat(there.size()).isEqualTo(own.size());
    for (int i = 0; i < own.size(); i++) {
      Point a = own.corner(i + 1).minus(own.corner(i)).times(way);
      Point b = there.corner(i + 1).minus(there.corner(i));
      assertThat(a.distance(b)).isLessThan(1e-6);
    }
  }

  private static void clearOfEachOther(CutSheet cut) {
    List<Region> outlines = new ArrayList<>();
    for (CutSheet.Placed placed : cut.pieces()) {
      Region region = placed.outline();
      for (Region other : outlines) {
        double shared =
            Overlay.common(List.of(region), List.of(other)).stream()
                .mapToDouble(Region::area)
                .sum();
        assertThat(shared).as("overlap in sheet %s", cut.number()).isLessThan(1e-4);
      }
      outlines.add(region);
    }
  }
}
