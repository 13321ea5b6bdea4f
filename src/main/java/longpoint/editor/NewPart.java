package longpoint.editor;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import longpoint.geometry.Ring;
import longpoint.plan.Deck;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Extras;
import longpoint.plan.Frame;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.units.LengthUnit;

/** Parts as they are when just drawn: framed, decked and as high as the part drawn before. */
public final class NewPart {
  /**
   * Top of plate above the floor for studs cut 92 5/8 in with three plates of 1 1/2 in: 97 1/8 in
   * (common practice), and 2440 mm where the plan is metric.
   */
  private static double plateHeight(LengthUnit unit) {
    return unit == LengthUnit.INCH ? 97.125 : 2440;
  }

  private NewPart() {}

  /** A part whose roof slopes down to every side. */
  public static Part hipped(Plan plan, String stem, Ring outline) {
    return of(plan, stem, outline, Collections.nCopies(outline.size(), EdgeKind.EAVE));
  }

  /**
   * A four-sided part with eaves along its longer sides; of a square, along those nearest level.
   */
  public static Part gabled(Plan plan, String stem, Ring outline) {
    boolean firstIsEave = outline.side(0).length() >= outline.side(1).length();
    List<EdgeKind> kinds = new ArrayList<>();
    for (int i = 0; i < outline.size(); i++) {
      kinds.add((i % 2 == 0) == firstIsEave ? EdgeKind.EAVE : EdgeKind.GABLE);
    }
    return of(plan, stem, outline, kinds);
  }

  /**
   * A part with a free id and name.
   *
   * @param stem what kind of thing it is: {@code main}, {@code wing}; the name comes from the
   *     messages
   * @param outline counter-clockwise
   * @param kinds one for each side
   */
  public static Part of(Plan plan, String stem, Ring outline, List<EdgeKind> kinds) {
    Part fresh =
        new Part(
            plan.freshId(stem),
            Copies.freshName(plan, Messages.text("part." + stem)),
            false,
            outline,
            List.of(),
            plateHeight(plan.unit()),
            kinds.stream().map(Edge::of).toList(),
            Frame.of(plan.unit()),
            Deck.of(plan.unit()),
            Extras.NONE);
    return plan.parts().isEmpty() ? fresh : like(plan.parts().get(plan.parts().size() - 1), fresh);
  }

  /** What a plain new part is called: the first one the house. */
  public static String stem(Plan plan) {
    return plan.parts().isEmpty() ? "main" : "part";
  }

  private static Part like(Part last, Part fresh) {
    return fresh.withPlateHeight(last.plateHeight()).withFrame(last.frame()).withDeck(last.deck());
  }
}
