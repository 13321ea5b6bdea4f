package longpoint.field.loads;

import java.util.List;

/**
 * A stretch of wall with like bearings at like distances.
 *
 * @param wall id of the side
 * @param from start of the stretch, along the wall from its first corner
 * @param to end of it
 * @param marks of what stands there
 * @param bearings how many
 * @param area ground nearest to them; the areas of all bearings tile the roof
 * @param width of level roof that each length of wall carries, by statics
 * @param reaction of them all
 * @param force of them all
 * @param line the same for each foot, or metre
 */
public record WallLoad(
    String wall,
    double from,
    double to,
    List<String> marks,
    int bearings,
    double area,
    double width,
    Amount reaction,
    Force force,
    Force line) {
  public WallLoad {
    marks = List.copyOf(marks);
  }
}
