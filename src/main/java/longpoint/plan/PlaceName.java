package longpoint.plan;

import java.util.Objects;
import longpoint.geometry.Point;
import longpoint.wording.Language;
import longpoint.wording.Phrase;
import longpoint.wording.Worded;

/**
 * A part or one of its walls, as people on the site name it: a wall by the side of the house it
 * faces, with a number where several of the part's walls face that way. North is where the plan
 * says it is, else up the page.
 *
 * @param part id of the part
 * @param side number of the side in its part, from 0; {@link #WHOLE} for the part itself
 * @param words its name; what its id says until {@link #in(Plan)} is asked
 */
public record PlaceName(String part, int side, Worded words) implements Worded {
  /** No side: the part as a whole. */
  public static final int WHOLE = -1;

  private static final String[] FACING = {
    "east", "northeast", "north", "northwest", "west", "southwest", "south", "southeast"
  };
  private static final double EIGHTH = Math.PI / 4;

  public PlaceName {
    Objects.requireNonNull(part);
    Objects.requireNonNull(words);
  }

  /** A part by its name, or by its id where it has none. */
  public static PlaceName of(Part part) {
    Worded words =
        part.name().isBlank()
            ? Phrase.of("plan.place.unnamed", part.id())
            : Worded.plain(part.name());
    return new PlaceName(part.id(), WHOLE, words);
  }

  /**
   * A wall by the way it faces, north being up the page until {@link #in(Plan)} is asked: the east
   * wall of Garden wing.
   *
   * @param side 0 to the part's side count − 1
   */
  public static PlaceName of(Part part, int side) {
    return of(part, side, 0);
  }

  /** As {@link #of(Part, int)}, by the north of a plan. */
  public static PlaceName of(Plan plan, Part part, int side) {
    return of(part, side, plan.particulars().north().orElse(0.0));
  }

  private static PlaceName of(Part part, int side, double north) {
    PlaceName whole = of(part);
    if (part.side(side).length() == 0) {
      return new PlaceName(part.id(), side, counted(whole, side));
    }
    String facing = facing(part, side, north);
    int same = 0;
    int place = 0;
    for (int i = 0; i < part.sideCount(); i++) {
      if (part.side(i).length() > 0 && facing(part, i, north).equals(facing)) {
        same++;
        place = i <= side ? same : place;
      }
    }
    Phrase wall = Phrase.of("plan.wall." + facing, whole);
    return new PlaceName(
        part.id(), side, same == 1 ? wall : Phrase.of("plan.wall.numbered", wall, place));
  }

  /** A part that is known by its id only, until {@link #in(Plan)} is asked. */
  public static PlaceName part(String id) {
    return new PlaceName(id, WHOLE, Phrase.of("plan.place.unnamed", id));
  }

  /** A wall that is known by its number only, until {@link #in(Plan)} is asked. */
  public static PlaceName wall(Side side) {
    return new PlaceName(side.part(), side.index(), counted(part(side.part()), side.index()));
  }

  /** As its user calls it; unchanged if the plan has no such part. */
  public PlaceName in(Plan plan) {
    return plan.part(part).map(p -> side < 0 ? of(p) : of(plan, p, side)).orElse(this);
  }

  @Override
  public String in(Language language) {
    return words.in(language);
  }

  /** The same without its article, as it stands in a table: east wall of Garden wing. */
  public String label(Language language) {
    String article = Phrase.of("plan.wall.article").in(language) + " ";
    String said = in(language);
    return side >= 0 && said.startsWith(article) ? said.substring(article.length()) : said;
  }

  /** As people count: the first side is side 1. */
  private static Phrase counted(PlaceName part, int side) {
    return Phrase.of("plan.wall.counted", side + 1, part);
  }

  private static String facing(Part part, int side, double north) {
    return way(part.side(side).direction().left().times(-1), north);
  }

  /**
   * The nearest of the eight winds, as in {@code northeast}.
   *
   * @param direction on the plan, not nothing
   * @param north degrees clockwise from up the page
   */
  public static String way(Point direction, double north) {
    double turned = StrictMath.atan2(direction.y(), direction.x()) + Math.toRadians(north);
    double eighths = turned / EIGHTH;
    return FACING[(int) Math.floorMod(Math.round(eighths), 8L)];
  }
}
