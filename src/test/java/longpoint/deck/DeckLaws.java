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
      assertThat(piece.bounds().minY())
          .isGreaterThanOrEqualTo(plane.courses().get(piece.course() - 1).from() - 1e-6);
    }
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
          Course course = plane.courses().get(piece.course() - 1);
          assertThat(course.joints()).anyMatch(j -> Math.abs(j - edge.line().middle().x()) < 1e-6);
        }
      }
    }
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
