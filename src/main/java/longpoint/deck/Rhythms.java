package longpoint.deck;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import longpoint.plan.Deck;

/** The rhythms of end joints worth trying on a plane, for each way to start. */
final class Rhythms {
  /**
   * How many rhythms of freely chosen courses are tried besides the plain ones. On hipped samples
   * forty found all but one of the sheets that a thousand found.
   */
  private static final int FREE = 40;

  private static final long SEED = 96;

  private final double[] places;
  private final Panel panel;
  private final double left;
  private final double right;
  private final JointChain.Ends ends;
  private final int courses;

  private Rhythms(List<Strip> strips, Uprights uprights, Panel panel) {
    this.places = uprights.places();
    this.panel = panel;
    int lowest = strips.get(0).course();
    this.left =
        strips.stream()
            .filter(s -> s.course() == lowest)
            .mapToDouble(this::from)
            .min()
            .orElseThrow();
    this.right =
        strips.stream().filter(s -> s.course() == lowest).mapToDouble(this::to).max().orElseThrow();
    this.ends =
        new JointChain.Ends(
            strips.stream().mapToDouble(this::from).min().orElseThrow(),
            strips.stream().mapToDouble(this::to).max().orElseThrow());
    this.courses = strips.get(strips.size() - 1).course();
  }

  private double from(Strip strip) {
    return strip.bounds().minX();
  }

  private double to(Strip strip) {
    return strip.bounds().maxX();
  }

  /**
   * @param strips of the plane, lowest course first
   * @return at least one; exactly one unless the start is {@link Deck.Start#LEAST}, when the first
   *     three are the plain starts
   */
  static List<JointChain> of(List<Strip> strips, Uprights uprights, Deck.Start start, Panel panel) {
    Rhythms rhythms = new Rhythms(strips, uprights, panel);
    return start == Deck.Start.LEAST ? rhythms.every() : List.of(rhythms.plain(start));
  }

  /** Whole sheets from the start, every other course half a sheet off. */
  private JointChain plain(Deck.Start start) {
    double anchor = anchor(start);
    if (places.length == 0) {
      return new JointChain(List.of(module(anchor), module(anchor + panel.length() / 2)));
    }
    return through(anchor, JointChain.half(places, ends, anchor, panel));
  }

  private JointChain through(double... anchors) {
    return JointChain.through(places, ends, anchors, panel);
  }

  /** Where a whole sheet laid at the start of the first course would end, moved onto a support. */
  private double anchor(Deck.Start start) {
    double wish =
        switch (start) {
          case LEFT, LEAST -> left + panel.length();
          case RIGHT -> right - panel.length();
          case CENTRE -> (left + right) / 2;
        };
    double best = Double.NaN;
    for (double place : places) {
      boolean reach =
          switch (start) {
            case LEFT, LEAST -> place <= wish + panel.rounding();
            case RIGHT -> place >= wish - panel.rounding();
            case CENTRE -> true;
          };
      if (reach && !(Math.abs(place - wish) >= Math.abs(best - wish) - panel.rounding())) {
        best = place;
      }
    }
    return Double.isNaN(best) ? wish : best;
  }

  /** With nothing to land on, joints keep the sheet module. */
  private double[] module(double anchor) {
    double u = anchor - panel.length() * Math.ceil((anchor - ends.left()) / panel.length());
    List<Double> steps = new ArrayList<>();
    for (; u < ends.right(); u += panel.length()) {
      steps.add(u);
    }
    return steps.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** The plain starts, every pair of phases, and some in which each course goes its own way. */
  private List<JointChain> every() {
    List<JointChain> all = new ArrayList<>();
    for (Deck.Start plain : List.of(Deck.Start.LEFT, Deck.Start.RIGHT, Deck.Start.CENTRE)) {
      all.add(plain(plain));
    }
    double[] phases =
        Arrays.stream(places)
            .filter(u -> u > left && u <= left + panel.length() + panel.rounding())
            .toArray();
    for (double first : phases) {
      JointChain chain = through(first, JointChain.half(places, ends, first, panel));
      all.add(chain);
      for (double second : phases) {
        if (JointChain.clear(second, chain.of(1), panel)) {
          all.add(through(first, second));
        }
      }
    }
    if (phases.length > 0 && courses > 2) {
      Random random = new Random(SEED);
      for (int i = 0; i < FREE; i++) {
        all.add(
            through(random.ints(courses, 0, phases.length).mapToDouble(k -> phases[k]).toArray()));
      }
    }
    return all;
  }
}
