package longpoint.sheets;

import java.util.List;
import longpoint.drawing.Ink;
import longpoint.drawing.Layer;
import longpoint.drawing.Pen;
import longpoint.surface.LineKind;

/**
 * The layers of every drawing. Names are formed by the rule of the US National CAD Standard:
 * discipline, major group, minor group of four letters, status (E: existing); the minor groups for
 * kinds of roof line are our own, as the rule allows. Line widths are those of line group 0.35 for
 * construction drawings (ISO 128-23, from memory): narrow 0.18, wide 0.35, extra wide 0.7 mm, in
 * the ratio 1:2:4, and 0.25 for symbols. Hidden lines are dashed and narrow, lines to measure and
 * centre lines are chains. No two kinds of line that meet differ by colour alone: the roof's edge
 * is extra wide, ridges and hips are wide and whole, valleys wide and long-dashed.
 */
public final class Layers {
  public static final Layer TINT =
      new Layer("A-ROOF-PATT", "Roof planes", Pen.solid(0.18), Ink.TINT);
  public static final Layer WALL = new Layer("A-WALL-OTLN", "Walls", Pen.solid(0.35), Ink.MAIN);
  public static final Layer WALL_EXISTING =
      new Layer("A-WALL-OTLN-E", "Existing walls", Pen.solid(0.18), Ink.QUIET);
  public static final Layer COVERED =
      new Layer("A-ROOF-HIDN", "Beneath another roof", Pen.dashed(0.18), Ink.HIDDEN);
  public static final Layer RIDGE = new Layer("A-ROOF-RIDG", "Ridge", Pen.solid(0.35), Ink.RIDGE);
  public static final Layer HIP = new Layer("A-ROOF-HIPS", "Hip", Pen.solid(0.35), Ink.RIDGE);
  public static final Layer VALLEY =
      new Layer("A-ROOF-VALY", "Valley", longDashed(0.35), Ink.VALLEY);
  public static final Layer EAVE = new Layer("A-ROOF-EAVE", "Eave", Pen.solid(0.7), Ink.EDGE);
  public static final Layer RAKE = new Layer("A-ROOF-RAKE", "Rake", Pen.solid(0.7), Ink.EDGE);
  public static final Layer BREAK =
      new Layer("A-ROOF-BRKS", "Pitch break", new Pen(0.35, Pen.LineType.DOTTED), Ink.RIDGE);
  public static final Layer ABUTMENT =
      new Layer("A-ROOF-ABUT", "Abutment", chain(0.35), Ink.VALLEY);
  public static final Layer STEP = new Layer("A-ROOF-STEP", "Step", chain(0.35), Ink.EDGE);
  public static final Layer SLOPE =
      new Layer("A-ROOF-SLOP", "Slope, arrow points down", Pen.solid(0.25), Ink.MAIN);
  public static final Layer NAMES = new Layer("A-ROOF-IDEN", "Names", Pen.solid(0.25), Ink.MAIN);
  public static final Layer DIMENSIONS =
      new Layer("A-ANNO-DIMS", "Dimensions", Pen.solid(0.18), Ink.MEASURE);
  public static final Layer DIAGONAL =
      new Layer("A-WALL-DIAG", "Diagonal to check", chain(0.18), Ink.QUIET);
  public static final Layer CORNER =
      new Layer("A-WALL-IDEN", "Numbers of corners", Pen.solid(0.18), Ink.MAIN);
  public static final Layer DRAWN =
      new Layer("A-WALL-DRWN", "Walls as drawn", Pen.solid(0.18), Ink.MAIN);
  public static final Layer BUILT =
      new Layer("A-WALL-BILT", "Walls as built", Pen.solid(0.5), Ink.RIDGE);
  public static final Layer TAPED =
      new Layer("A-WALL-TAPE", "Taped", new Pen(0.18, Pen.LineType.DOTTED), Ink.QUIET);
  public static final Layer DOUBTED =
      new Layer("A-WALL-DOUB", "Taped, left out", Pen.dashed(0.35), Ink.ALERT);
  public static final Layer FRAME =
      new Layer("A-ANNO-TTLB", "Border and title block", Pen.solid(0.7), Ink.MAIN);
  public static final Layer RULES =
      new Layer("A-ANNO-RULE", "Rules of tables", Pen.solid(0.18), Ink.QUIET);
  public static final Layer TEXT = new Layer("A-ANNO-TEXT", "Lettering", Pen.solid(0.25), Ink.MAIN);
  public static final Layer SMALL_PRINT =
      new Layer("A-ANNO-NOTE", "Notes", Pen.solid(0.25), Ink.QUIET);
  public static final Layer PLAN_NOTES =
      new Layer("A-ANNO-LABL", "Notes on the plan", Pen.solid(0.25), Ink.MAIN);
  public static final Layer SYMBOL =
      new Layer("A-ANNO-SYMB", "North arrow and scale bar", Pen.solid(0.25), Ink.MAIN);

  public static final Layer ALERT =
      new Layer("A-ANNO-ALRT", "What is wrong", Pen.solid(0.35), Ink.ALERT);

  public static final Layer DECK = new Layer("A-ROOF-DECK", "Sheathing", Pen.solid(0.18), Ink.MAIN);
  public static final Layer OUTLINE =
      new Layer("A-ROOF-OTLN", "Outline of a plane", Pen.solid(0.35), Ink.EDGE);

  public static final Layer SUPPORT = new Layer("S-TRUS-CNTR", "Supports", chain(0.18), Ink.QUIET);
  public static final Layer CHALK =
      new Layer("A-ROOF-CHLK", "Chalk lines", Pen.solid(0.35), Ink.VALLEY);
  public static final Layer OFFCUT =
      new Layer("A-DECK-OFFC", "Left over", Pen.dashed(0.18), Ink.HIDDEN);

  private Layers() {}

  /** The layer of a kind of roof line. */
  public static Layer of(LineKind kind) {
    return switch (kind) {
      case RIDGE -> RIDGE;
      case HIP -> HIP;
      case VALLEY -> VALLEY;
      case EAVE -> EAVE;
      case RAKE -> RAKE;
      case BREAK -> BREAK;
      case ABUTMENT -> ABUTMENT;
      case STEP -> STEP;
    };
  }

  /** Every layer a plan view may use, in the order they are painted. */
  public static List<Layer> ofPlanView() {
    return List.of(
        TINT,
        COVERED,
        WALL_EXISTING,
        WALL,
        EAVE,
        RAKE,
        BREAK,
        ABUTMENT,
        STEP,
        VALLEY,
        HIP,
        RIDGE,
        DIMENSIONS,
        SLOPE,
        NAMES,
        PLAN_NOTES);
  }

  private static Pen longDashed(double widthMm) {
    return new Pen(widthMm, Pen.LineType.LONG_DASHED);
  }

  private static Pen chain(double widthMm) {
    return new Pen(widthMm, Pen.LineType.CHAIN);
  }
}
