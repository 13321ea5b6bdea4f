package longpoint.field.loads;

import java.util.List;

/**
 * What hangs on a girder, or leans on a hip or valley rafter.
 *
 * @param member its id
 * @param mark on the layout
 * @param length from bearing to bearing
 * @param area ground nearest to it and to what hangs on it
 * @param reaction both its ends together
 * @param hangers in order along it
 */
public record GirderLoad(
    String member,
    String mark,
    double length,
    double area,
    Amount reaction,
    Force force,
    List<HangerLoad> hangers) {
  /**
   * @param carries id of what hangs there
   * @param mark of it
   * @param along from the girder's first bearing
   */
  public record HangerLoad(
      String carries, String mark, double along, Amount reaction, Force force) {}

  public GirderLoad {
    hangers = List.copyOf(hangers);
  }
}
