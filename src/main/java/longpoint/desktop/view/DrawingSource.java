package longpoint.desktop.view;

import java.util.List;
import java.util.Optional;
import longpoint.desktop.Picks;
import longpoint.drawing.Drawing;
import longpoint.pipeline.Design;

/** Where a {@link DrawingPane} gets its drawings: one of several at a time. */
interface DrawingSource {
  /**
   * One of the drawings there are.
   *
   * @param id stable while the plan is worked on
   * @param title as people choose it by
   */
  record Item(String id, String title) {
    @Override
    public String toString() {
      return title;
    }
  }

  /** What can be drawn of a design, in order. */
  List<Item> items(Design design);

  /** Which of them shows what is picked. */
  Optional<String> wanted(Design design, Picks picks);

  /**
   * The drawing itself. Runs off the event thread.
   *
   * @param unitsPerMm what its lettering is laid out for
   */
  Drawing draw(Design design, String id, double unitsPerMm);
}
