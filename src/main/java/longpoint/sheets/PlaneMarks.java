package longpoint.sheets;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/**
 * Letters that stand for roof planes on sheets: A, B … Z, AA, AB …, in the order of the surface, so
 * that the same plan gives the same letters.
 */
public final class PlaneMarks {
  private PlaneMarks() {}

  /** Letter of every plane by its id, in order. */
  public static Map<String, String> of(RoofSurface surface) {
    Map<String, String> marks = new LinkedHashMap<>();
    List<RoofPlane> planes = surface.planes();
    for (int i = 0; i < planes.size(); i++) {
      marks.put(planes.get(i).id(), letters(i));
    }
    return marks;
  }

  private static String letters(int number) {
    String last = String.valueOf((char) ('A' + number % 26));
    return number < 26 ? last : letters(number / 26 - 1) + last;
  }
}
