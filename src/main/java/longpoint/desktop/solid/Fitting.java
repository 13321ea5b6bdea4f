package longpoint.desktop.solid;

import java.awt.Dimension;
import longpoint.geometry.Point3;
import longpoint.sheets.solid.RoofSolid;
import longpoint.sheets.solid.SolidFace;

/** Brings a whole house into a room, turned as it is. An empty one leaves the stand as it was. */
final class Fitting {
  private double low = Double.MAX_VALUE;
  private double high = -Double.MAX_VALUE;

  private Fitting() {}

  /** The house as large as the room allows, its box's middle in the room's. */
  static Stand filled(Stand stand, RoofSolid house, Dimension room) {
    if (house.faces().isEmpty()) {
      return stand;
    }
    Stand about = stand.looking(1, middle(house));
    Projection flat = new Projection(about, 1, 0, 0);
    Fitting across = new Fitting();
    Fitting down = new Fitting();
    for (SolidFace face : house.faces()) {
      for (Point3 p : face.rings().get(0)) {
        double[] at = flat.of(p);
        across.take(at[0]);
        down.take(at[1]);
      }
    }
    double scale = Math.min(room.width / across.reach(), room.height / down.reach());
    return about.looking(scale, about.centre());
  }

  /** The stand itself, or one so far back that the house still has room. */
  static Stand kept(Stand stand, RoofSolid house, Dimension room) {
    Stand filled = filled(stand, house, room);
    return filled.scale() < stand.scale() ? stand.looking(filled.scale(), stand.centre()) : stand;
  }

  private static Point3 middle(RoofSolid house) {
    Fitting x = new Fitting();
    Fitting y = new Fitting();
    Fitting z = new Fitting();
    for (SolidFace face : house.faces()) {
      for (Point3 p : face.rings().get(0)) {
        x.take(p.x());
        y.take(p.y());
        z.take(p.z());
      }
    }
    return new Point3((x.low + x.high) / 2, (y.low + y.high) / 2, (z.low + z.high) / 2);
  }

  private void take(double at) {
    low = Math.min(low, at);
    high = Math.max(high, at);
  }

  /** Twice the farther of its two ends from nought: what has room both ways about the middle. */
  private double reach() {
    return 2 * Math.max(high, -low);
  }
}
