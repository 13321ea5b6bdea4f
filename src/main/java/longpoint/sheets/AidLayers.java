package longpoint.sheets;

import java.util.List;
import longpoint.drawing.Ink;
import longpoint.drawing.Layer;
import longpoint.drawing.Pen;

/** Layers of the sheets on lifting, restraint and loads, named by the rule of {@link Layers}. */
final class AidLayers {
  static final Layer TOP_ROW =
      new Layer(
          "S-BRAC-TOPC", "Row on top chords", new Pen(0.5, Pen.LineType.LONG_DASHED), Ink.VALLEY);
  static final Layer PEAK_ROW =
      new Layer("S-BRAC-PEAK", "Row at peak or break", Pen.solid(0.5), Ink.VALLEY);
  static final Layer BOTTOM_ROW =
      new Layer("S-BRAC-BOTC", "Row on bottom chords", Pen.dashed(0.35), Ink.RIDGE);
  static final Layer DIAGONAL =
      new Layer("S-BRAC-DIAG", "Diagonals here", Pen.solid(0.35), Ink.ALERT);

  static final Layer LINE = new Layer("S-LIFT-LINE", "Line", Pen.solid(0.35), Ink.VALLEY);
  static final Layer HANG = new Layer("S-LIFT-HANG", "Hang point", Pen.solid(0.5), Ink.ALERT);
  static final Layer CENTRE =
      new Layer("S-LIFT-CNTR", "Centre of gravity", Pen.solid(0.35), Ink.ALERT);
  static final Layer AROUND =
      new Layer("S-LIFT-OTLN", "Outline over all", Pen.dashed(0.18), Ink.HIDDEN);

  static final Layer LOADED =
      new Layer("S-LOAD-WALL", "Stretch of wall", Pen.solid(0.7), Ink.RIDGE);
  static final Layer POST = new Layer("S-LOAD-POST", "Girder's bearing", Pen.solid(0.7), Ink.ALERT);

  private AidLayers() {}

  static List<Layer> ofRestraint() {
    return List.of(FrameLayers.WALL, FrameLayers.TRUSS, TOP_ROW, PEAK_ROW, BOTTOM_ROW, DIAGONAL);
  }

  static List<Layer> ofLift() {
    return List.of(FrameLayers.TRUSS, AROUND, LINE, HANG, CENTRE);
  }

  static List<Layer> ofLoads() {
    return List.of(FrameLayers.WALL, FrameLayers.TRUSS, LOADED, POST);
  }
}
