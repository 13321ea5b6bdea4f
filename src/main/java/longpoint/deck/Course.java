package longpoint.deck;

import java.util.List;

/**
 * One row of sheets.
 *
 * @param number from 1 at the fascia
 * @param from lower course line, v
 * @param to upper course line, or the top of the plane
 * @param joints u of its end joints, in order
 */
public record Course(int number, double from, double to, List<Double> joints) {
  public Course {
    joints = List.copyOf(joints);
  }
}
