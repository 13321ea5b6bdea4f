package longpoint.editor;

import longpoint.geometry.Point;
import longpoint.geometry.Segment;

/** Which end of a side moves when its length is typed. */
public enum GivesWay {
  START,
  FINISH,
  BOTH;

  /** The end in words, e.g. "left". */
  public String name(Segment wall) {
    return Messages.text(key(wall));
  }

  /**
   * Key of the end by how it lies on the sheet, which is how one looks at it: {@code end.left},
   * {@code end.right}, {@code end.upper}, {@code end.lower} or {@code end.both}.
   */
  public String key(Segment wall) {
    if (this == BOTH) {
      return "end.both";
    }
    Point step = wall.to().minus(wall.from());
    boolean finish = this == FINISH;
    if (Math.abs(step.x()) >= Math.abs(step.y())) {
      return step.x() > 0 == finish ? "end.right" : "end.left";
    }
    return step.y() > 0 == finish ? "end.upper" : "end.lower";
  }
}
