package longpoint.editor;

import java.util.List;
import longpoint.geometry.Point;
import longpoint.plan.Part;

/** Walls as people on the site name them: by the side of the house they face, north being up. */
public final class WallName {
  private static final List<String> FACING =
      List.of("east", "northeast", "north", "northwest", "west", "southwest", "south", "southeast");

  private WallName() {}

  /** E.g. "the north wall of House", with the side's number where several face that way. */
  public static String of(Part part, int side) {
    String facing = facing(part, side);
    int same = 0;
    int place = 0;
    for (int i = 0; i < part.sideCount(); i++) {
      if (facing(part, i).equals(facing)) {
        same++;
        place = i <= side ? same : place;
      }
    }
    String wall = Messages.text("wall." + facing, part.name());
    return same == 1 ? wall : Messages.text("wall.numbered", wall, place);
  }

  private static String facing(Part part, int side) {
    if (part.side(side).length() == 0) {
      return FACING.get(0);
    }
    Point out = part.side(side).direction().left().times(-1);
    double eighths = StrictMath.atan2(out.y(), out.x()) / (Math.PI / 4);
    return FACING.get(Math.floorMod(Math.round(eighths), 8));
  }
}
