package longpoint.sheets;

import java.util.List;
import longpoint.drawing.Ink;
import longpoint.drawing.Layer;
import longpoint.drawing.Pen;

/**
 * The layers of the frame, named by the same rule as {@link Layers}: discipline S for structure.
 * Girders take the widest pen, so that what carries others stands out; walls and roof lines beneath
 * are quiet.
 */
public final class FrameLayers {
  /** Start of the name of every layer that the window's switch for the frame turns on and off. */
  public static final String PREFIX = "S-";

  public static final Layer WALL =
      new Layer("A-WALL-BASE", "Walls beneath", Pen.solid(0.18), Ink.QUIET);
  public static final Layer ROOF =
      new Layer("A-ROOF-ABOV", "Roof lines above", Pen.dashed(0.18), Ink.HIDDEN);
  public static final Layer TRUSS = new Layer("S-TRUS-OTLN", "Truss", Pen.solid(0.35), Ink.MAIN);
  public static final Layer GIRDER = new Layer("S-TRUS-GIRD", "Girder", Pen.solid(0.7), Ink.RIDGE);
  public static final Layer VALLEY =
      new Layer("S-TRUS-VALY", "Valley truss", Pen.solid(0.35), Ink.VALLEY);
  public static final Layer HANGER = new Layer("S-HNGR-OTLN", "Hanger", Pen.solid(0.7), Ink.ALERT);
  public static final Layer RAFTER = new Layer("S-RAFT-OTLN", "Rafter", Pen.solid(0.35), Ink.MAIN);
  public static final Layer LADDER =
      new Layer("S-LADR-OTLN", "Lookout and fly rafter", Pen.solid(0.18), Ink.EDGE);
  public static final Layer MARK = new Layer("S-TRUS-IDEN", "Marks", Pen.solid(0.18), Ink.MAIN);
  public static final Layer TAPE =
      new Layer("S-TRUS-DIMS", "Tape marks", Pen.solid(0.18), Ink.MEASURE);
  public static final Layer WEB =
      new Layer("S-TRUS-WEBS", "Web, shape only", Pen.dashed(0.18), Ink.HIDDEN);
  public static final Layer DECK_EDGE =
      new Layer("S-VALY-DECK", "Edges of the deck", Pen.solid(0.35), Ink.EDGE);
  public static final Layer SET_LINE =
      new Layer("S-VALY-SETL", "Set line: chord ends", Pen.solid(0.35), Ink.VALLEY);
  public static final Layer SHEET_LINE =
      new Layer(
          "S-VALY-SHTL",
          "Sheet line: wing's sheathing",
          new Pen(0.35, Pen.LineType.LONG_DASHED),
          Ink.VALLEY);
  public static final Layer CENTRE =
      new Layer("S-VALY-CNTR", "Centre line", new Pen(0.18, Pen.LineType.CHAIN), Ink.MAIN);
  public static final Layer BEARING =
      new Layer("S-VALY-BEAR", "Uphill face of truss", Pen.solid(0.7), Ink.MAIN);
  public static final Layer STOP =
      new Layer("S-VALY-STOP", "Stop nails", Pen.dashed(0.18), Ink.RIDGE);

  public static final Layer TRUSS_LINE =
      new Layer("S-FRAM-TRUS", "Trusses", Pen.solid(0.18), Ink.QUIET);
  public static final Layer RAFTER_LINE =
      new Layer("S-FRAM-RAFT", "Rafters", Pen.solid(0.18), Ink.QUIET);

  public static final Layer MATCH =
      new Layer("S-TRUS-MATC", "Match line", new Pen(0.35, Pen.LineType.CHAIN), Ink.MAIN);

  private FrameLayers() {}

  /** Those that stand over a plan, in the order they are painted. */
  public static List<Layer> ofLayout() {
    return List.of(WALL, ROOF, LADDER, RAFTER, VALLEY, TRUSS, GIRDER, HANGER, TAPE, MATCH, MARK);
  }

  /** Those of a valley set, in the order they are explained. */
  static List<Layer> ofValley() {
    return List.of(DECK_EDGE, WALL, SET_LINE, SHEET_LINE, BEARING, STOP, CENTRE);
  }
}
