package longpoint.deck;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.BooleanSupplier;
import longpoint.deck.nest.Nest;
import longpoint.deck.nest.Sharing;
import longpoint.geometry.Ring;
import longpoint.stop.CalledOff;

/**
 * Looks for fewer sheets once every plane has its rhythm: course by course, other joints are tried
 * that keep every rule, with the pieces of that course and of a few sheets placed again. Kept is
 * what takes fewer sheets, or as many with what is left over gathered better; early on a little
 * worse will do as well, so that the search does not stick (a threshold that falls to nothing). The
 * seeds are fixed: the same roof gives the same sheets.
 */
final class Refining {
  /** Rounds for the courses cubed, within limits that keep large roofs to some seconds. */
  private static final int ROUNDS_PER_COURSE_CUBED = 20;

  private static final int LEAST_ROUNDS = 1000;
  private static final int MOST_ROUNDS = 60_000;

  /** How much worse gathered, in sheets squared, the first rounds may leave what is over. */
  private static final double FIRST_THRESHOLD = 0.03;

  /** Searches side by side; the first of those that find the fewest sheets is taken. */
  private static final long[] SEEDS = {1995, 7, 42, 96};

  /** One course of one plane: what the search exchanges. */
  private static final class Row {
    final int group;
    final Panel panel;
    final List<Strip> strips = new ArrayList<>();
    final List<Cuts> cuts = new ArrayList<>();
    final List<double[]> held = new ArrayList<>();
    Row below;
    Row above;
    double[] joints = {};
    List<Laying.Cell> cells = List.of();

    Row(int group, Panel panel) {
      this.group = group;
      this.panel = panel;
    }
  }

  private final List<List<Row>> planes = new ArrayList<>();
  private final List<Row> free = new ArrayList<>();
  private final Map<Panel, Sharing> sharing = new LinkedHashMap<>();
  private final Map<Panel, Integer> bounds;
  private final Random random;

  private Refining(
      List<Sheathing.Choice> choices, List<Laying> layings, Map<Panel, Integer> bounds, long seed) {
    this.bounds = bounds;
    this.random = new Random(seed);
    int groups = 0;
    for (int i = 0; i < choices.size(); i++) {
      List<Row> rows = rows(choices.get(i), layings.get(i), groups);
      planes.add(rows);
      groups += rows.size();
      boolean open = choices.get(i).rhythms().size() > 1;
      if (open && layings.get(i).kept() == JointChoice.Kept.ALL) {
        free.addAll(rows);
      }
    }
  }

  /**
   * @param choices of every plane; those with one rhythm only are left as they are
   * @param layings chosen so far
   */
  static Found of(
      List<Sheathing.Choice> choices, List<Laying> layings, Map<Panel, Integer> bounds) {
    List<Refining> searches =
        Arrays.stream(SEEDS)
            .mapToObj(seed -> new Refining(choices, layings, bounds, seed))
            .toList();
    if (searches.get(0).free.isEmpty()) {
      return new Found(layings, Map.of(), bounds);
    }
    // The searches run on other threads, which nobody interrupts.
    Thread asking = Thread.currentThread();
    searches.parallelStream().forEach(s -> s.search(asking::isInterrupted));
    CalledOff.check();
    Refining best = searches.stream().min(Comparator.comparingInt(Refining::sheets)).orElseThrow();
    List<Laying> refined = new ArrayList<>();
    for (int i = 0; i < layings.size(); i++) {
      refined.add(laying(layings.get(i), best.planes.get(i)));
    }
    return new Found(refined, best.places(), bounds);
  }

  private int sheets() {
    return sharing.values().stream().mapToInt(Sharing::sheets).sum();
  }

  /**
   * What came of it.
   *
   * @param layings of the planes, in order
   * @param places for each kind of sheet, how its pieces, numbered plane by plane and course by
   *     course, are cut; nothing where it was not looked for
   * @param bounds for each kind of sheet, how many are needed in any case
   */
  record Found(
      List<Laying> layings,
      Map<Panel, List<List<Nest.Place>>> places,
      Map<Panel, Integer> bounds) {}

  private Map<Panel, List<List<Nest.Place>>> places() {
    Map<Panel, List<List<Nest.Place>>> places = new LinkedHashMap<>();
    sharing.forEach(
        (panel, found) -> {
          List<Integer> order = new ArrayList<>();
          for (List<Row> rows : planes) {
            rows.stream().filter(r -> r.panel.equals(panel)).forEach(r -> order.add(r.group));
          }
          places.put(panel, found.places(order));
        });
    return places;
  }

  private List<Row> rows(Sheathing.Choice choice, Laying laying, int groups) {
    Map<Integer, Row> rows = new LinkedHashMap<>();
    Panel panel = choice.ground().panel();
    for (int s = 0; s < choice.strips().size(); s++) {
      Strip strip = choice.strips().get(s);
      Row row = rows.computeIfAbsent(strip.course(), c -> new Row(groups + rows.size(), panel));
      row.strips.add(strip);
      row.cuts.add(new Cuts(strip, panel));
      row.held.add(choice.held().get(s));
    }
    List<Row> all = new ArrayList<>(rows.values());
    for (int r = 0; r < all.size(); r++) {
      Row row = all.get(r);
      row.below = r > 0 ? all.get(r - 1) : null;
      row.above = r + 1 < all.size() ? all.get(r + 1) : null;
      Course course = laying.courses().get(r);
      row.joints = course.joints().stream().mapToDouble(Double::doubleValue).toArray();
      row.cells = laying.pieces().stream().filter(c -> c.course() == course.number()).toList();
      sharing.merge(panel, share(start(panel), row, 0), (old, none) -> share(old, row, 0));
    }
    return all;
  }

  private static Sharing start(Panel panel) {
    return Sharing.empty(panel.length(), panel.width(), panel.rounding());
  }

  private Sharing share(Sharing from, Row row, int taken) {
    List<Ring> outlines = row.cells.stream().map(c -> c.outline().shell()).toList();
    return from.with(row.group, outlines, taken, random);
  }

  /**
   * @param off asked every round whether the search has been called off
   */
  private void search(BooleanSupplier off) {
    double wished = ROUNDS_PER_COURSE_CUBED * Math.pow(free.size(), 3);
    int rounds = (int) Math.max(LEAST_ROUNDS, Math.min(MOST_ROUNDS, wished));
    List<double[]> bestJoints = joints();
    Map<Panel, Sharing> best = new LinkedHashMap<>(sharing);
    for (int round = 0; round < rounds && !off.getAsBoolean(); round++) {
      Row row = free.get(random.nextInt(free.size()));
      double threshold = FIRST_THRESHOLD * (1 - (double) round / rounds);
      if (sharing.get(row.panel).sheets() > bounds.get(row.panel)) {
        exchange(row, threshold);
      }
      if (better(sharing.get(row.panel), best.get(row.panel), 0)) {
        best.put(row.panel, sharing.get(row.panel));
        bestJoints = joints();
      }
    }
    sharing.putAll(best);
    for (int i = 0; i < free.size(); i++) {
      if (!Arrays.equals(free.get(i).joints, bestJoints.get(i))) {
        lay(free.get(i), split(free.get(i), bestJoints.get(i)));
      }
    }
  }

  private List<double[]> joints() {
    return free.stream().map(r -> r.joints).toList();
  }

  /** Tries other joints in a course, or the same with sheets shared out anew. */
  private void exchange(Row row, double threshold) {
    double[] oldJoints = row.joints;
    List<Laying.Cell> oldCells = row.cells;
    if (random.nextInt(4) > 0) {
      List<double[]> walks = walks(row);
      if (walks.isEmpty()) {
        return;
      }
      lay(row, walks);
    }
    Sharing before = sharing.get(row.panel);
    Sharing after = share(before, row, random.nextInt(4));
    if (better(after, before, threshold)) {
      sharing.put(row.panel, after);
    } else {
      row.joints = oldJoints;
      row.cells = oldCells;
    }
  }

  private static boolean better(Sharing a, Sharing than, double threshold) {
    return a.sheets() < than.sheets()
        || (a.sheets() == than.sheets() && a.gathered() > than.gathered() - threshold);
  }

  private static void lay(Row row, List<double[]> walks) {
    List<Laying.Cell> cells = new ArrayList<>();
    for (int s = 0; s < row.strips.size(); s++) {
      cells.addAll(row.cuts.get(s).at(walks.get(s)));
    }
    row.cells = Scraps.joined(cells, row.panel);
    row.joints = walks.stream().flatMapToDouble(Arrays::stream).sorted().distinct().toArray();
  }

  /** The joints of a course strip by strip; a joint inside a strip is that strip's. */
  private static List<double[]> split(Row row, double[] joints) {
    return row.strips.stream()
        .map(
            s ->
                Arrays.stream(joints)
                    .filter(u -> u > s.bounds().minX() && u < s.bounds().maxX())
                    .toArray())
        .toList();
  }

  /** A random choice of joints that keeps the rules, or none. */
  private List<double[]> walks(Row row) {
    List<double[]> walks = new ArrayList<>();
    for (int s = 0; s < row.strips.size(); s++) {
      double[] clear =
          Arrays.stream(row.held.get(s))
              .filter(u -> row.below == null || JointChain.clear(u, row.below.joints, row.panel))
              .filter(u -> row.above == null || JointChain.clear(u, row.above.joints, row.panel))
              .toArray();
      double[] walk = JointChoice.stray(row.strips.get(s), clear, random, row.panel);
      if (walk == null) {
        return List.of();
      }
      walks.add(walk);
    }
    return walks;
  }

  private static Laying laying(Laying old, List<Row> rows) {
    List<Course> courses = new ArrayList<>();
    List<Laying.Cell> pieces = new ArrayList<>();
    for (int r = 0; r < rows.size(); r++) {
      Course c = old.courses().get(r);
      List<Double> joints = Arrays.stream(rows.get(r).joints).boxed().toList();
      courses.add(new Course(c.number(), c.from(), c.to(), joints));
      pieces.addAll(rows.get(r).cells);
    }
    return new Laying(courses, pieces, old.kept());
  }
}
