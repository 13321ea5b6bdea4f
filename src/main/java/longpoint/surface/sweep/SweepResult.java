package longpoint.surface.sweep;

import java.util.List;

/** What became of a sweep. */
public sealed interface SweepResult {
  /**
   * The ground shared out.
   *
   * @param nodes x, y and time of arrival of every node
   * @param faces one for each side that holds ground, in the order of the sides
   */
  record Solved(List<Node> nodes, List<Face> faces) implements SweepResult {
    public Solved {
      nodes = List.copyOf(nodes);
      faces = List.copyOf(faces);
    }
  }

  /**
   * Could not be done.
   *
   * @param side number of a side near the trouble
   * @param reason in words for the user
   */
  record Failed(int side, String reason) implements SweepResult {}

  /** A corner of faces. */
  record Node(double x, double y, double time) {}

  /**
   * The ground one side sweeps over.
   *
   * @param side its number
   * @param nodes numbers of its corners, counter-clockwise, starting with the side itself
   * @param holes rings of ground within it that it passed round, a courtyard of gables and what
   *     lies behind it; clockwise
   */
  record Face(int side, List<Integer> nodes, List<List<Integer>> holes) {
    public Face {
      nodes = List.copyOf(nodes);
      holes = List.copyOf(holes);
    }
  }
}
