package longpoint.desktop;

import java.util.HashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import longpoint.surface.RoofPlane;
import longpoint.surface.RoofSurface;

/**
 * Light from the upper left, as maps are shaded: planes that face it are brighter, planes that turn
 * away darker, and one sees at a glance which way each falls.
 */
final class Daylight implements ToDoubleFunction<String> {
  private final Map<String, Double> light = new HashMap<>();

  Daylight(RoofSurface surface) {
    for (RoofPlane plane : surface.planes()) {
      // The plane rises along (a, b), so it faces the other way. Light comes from (−0.6, 0.8).
      double a = plane.plane().a();
      double b = plane.plane().b();
      double steep = Math.hypot(a, b);
      light.put(plane.id(), steep == 0 ? 0 : (0.6 * a - 0.8 * b) / steep);
    }
  }

  @Override
  public double applyAsDouble(String subject) {
    return light.getOrDefault(subject, 0.0);
  }
}
