package longpoint.framing.truss;

import java.util.List;
import longpoint.wording.Phrase;

/**
 * A truss that carries others, and where its hangers go.
 *
 * @param truss id of the girder
 * @param mark of the girder
 * @param hangers in order along it
 * @param reminder what the crew should know before hanging trusses on it
 */
public record Girder(String truss, String mark, List<Hanger> hangers, Phrase reminder) {
  /** A face of a girder, looking from its first bearing to its last. */
  public enum Face {
    LEFT,
    RIGHT
  }

  /**
   * One hanger.
   *
   * @param along centre of the carried truss, from the outside face of the girder's first bearing
   * @param face of the girder that it is on
   * @param carries id of the carried truss
   * @param mark of the carried truss
   */
  public record Hanger(double along, Face face, String carries, String mark) {}

  public Girder {
    hangers = List.copyOf(hangers);
  }
}
