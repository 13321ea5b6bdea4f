package longpoint.framing.valley;

import java.util.ArrayList;
import java.util.List;

/**
 * Where every truss of a valley set stands and how large it is.
 *
 * <p>A chord's length is twice the half-width between the centre line and the set line at its
 * uphill face. Trusses made for the bare frame keep their size and slide down by {@code shift}, so
 * only the first gap changes. The set line is where the wing's frame plane meets the main deck and
 * the chords end; the sheet line, above it, is where the top of the wing's sheathing meets it.
 *
 * @param shift plan distance the set slid down
 * @param firstGap last ordinary truss to the first of the set, uphill face to uphill face
 * @param apexX where the set line's two sides meet, plan distance from the main wall face
 * @param apexV the same up the deck
 * @param meets whether they meet below the main ridge
 */
public record ValleyLayout(
    double shift,
    double firstGap,
    double apexX,
    double apexV,
    boolean meets,
    List<ValleyTruss> trusses,
    List<ValleyLine> setLines,
    List<ValleyLine> sheetLines) {

  /**
   * Chords shorter than this many truss thicknesses are left out, and whatever is lower than one is
   * thick: what is left is a block that the crew cuts on site, not a truss.
   */
  private static final double SHORTEST_CHORD = 2;

  public ValleyLayout {
    trusses = List.copyOf(trusses);
    setLines = List.copyOf(setLines);
    sheetLines = List.copyOf(sheetLines);
  }

  /** Works out the set for one site. Has no trusses where the wing stays below the deck. */
  public static ValleyLayout lay(ValleySite site) {
    double apex = site.main().xAt(site.wing().ridge());
    boolean meets = apex <= site.main().ridge() * (1 + SAME);
    return new ValleyLayout(
        site.shift(),
        site.spacing() - site.shift(),
        apex,
        site.main().v(apex),
        meets,
        trusses(site),
        lines(site, 0),
        lines(site, site.wing().deck()));
  }

  /** Two ridges at one height differ by rounding; a part in a billion of the run is no gap. */
  private static final double SAME = 1e-9;

  private static List<ValleyTruss> trusses(ValleySite site) {
    List<ValleyTruss> set = new ArrayList<>();
    for (int k = 1; ; k++) {
      double x = site.last() + k * site.spacing() - site.shift();
      double height = site.wing().ridge() - site.main().deckAt(x);
      double length = site.left(height) + site.right(height);
      boolean block = length < SHORTEST_CHORD * site.thickness() || height < site.thickness();
      if (block || x > site.main().ridge()) {
        return set;
      }
      ValleyTruss truss = truss(site, set.size() + 1, x);
      if (truss.height() >= site.thickness()) { // else the hipped front is not out of the roof yet
        set.add(truss);
      }
    }
  }

  static ValleyTruss truss(ValleySite site, int number, double x) {
    double height = site.wing().ridge() - site.main().deckAt(x);
    double left = site.left(height);
    double right = site.right(height);
    double v = site.main().v(x);
    // Its downhill face is the one that the plane over a hipped front may hold down.
    double top = site.wing().topAt(x - site.thickness()) - site.main().deckAt(x);
    return new ValleyTruss(
        number, x, v, v - site.thickness(), left + right, left, right, Math.min(height, top));
  }

  /** Both sides of the line where the wing's planes, raised by a sheet, meet the main deck. */
  private static List<ValleyLine> lines(ValleySite site, double sheet) {
    ValleySite.Wing wing = site.wing();
    double topLeft = wing.ridge() + ValleySite.plumb(sheet, wing.left());
    double topRight = wing.ridge() + ValleySite.plumb(sheet, wing.right());
    // With unequal slopes the raised planes meet a little to one side of the ridge.
    double aside = (topLeft - topRight) / (wing.left() + wing.right());
    double apex = Math.min(site.main().xAt(topLeft - wing.left() * aside), site.main().ridge());
    return List.of(
        line(site, ValleyLine.Side.LEFT, wing.left(), topLeft, wing.leftEave(), apex),
        line(site, ValleyLine.Side.RIGHT, wing.right(), topRight, wing.rightEave(), apex));
  }

  private static ValleyLine line(
      ValleySite site, ValleyLine.Side side, double slope, double top, double eave, double apex) {
    double foot = Math.max(site.main().arris(), site.main().xAt(top - slope * eave));
    double from = Math.min(foot, apex);
    return new ValleyLine(
        side,
        from,
        (top - site.main().deckAt(from)) / slope,
        apex,
        (top - site.main().deckAt(apex)) / slope);
  }
}
