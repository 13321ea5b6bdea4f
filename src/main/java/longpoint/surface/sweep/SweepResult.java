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
   * @param reason why
   */
  record Failed(int side, Reason reason) implements SweepResult {}

  /** Why an outline cannot be swept. */
  enum Reason {
    /** Not one slope for each side, or no side at all. */
    COUNTS("counts"),
    /** A slope that is no number from zero up. */
    SLOPE("slope"),
    /** No side moves. */
    NO_EAVE("noEave"),
    NO_LENGTH("noLength"),
    /** The outline runs clockwise, or a hole counter-clockwise. */
    TURNED("turned"),
    CROSSED("crossed"),
    /** Ground that no eave reaches. */
    STRANDED("stranded"),
    /** No engine's faces close round this side and pass the proof. */
    NOT_CLOSED("notClosed");

    private final String key;

    Reason(String key) {
      this.key = key;
    }

    /** Names this reason among what the surface says. */
    public String key() {
      return key;
    }
  }

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
