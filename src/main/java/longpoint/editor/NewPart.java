package longpoint.editor;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;

/** Parts as they are when just drawn: framed, decked and as high as the part drawn before. */
public final class NewPart {
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
    String name = Copies.freshName(plan, Messages.text("part." + stem));
    Part fresh = Part.fresh(plan.freshId(stem), name, new Region(outline), kinds, plan.unit());
    return plan.parts().isEmpty() ? fresh : like(plan.parts().get(plan.parts().size() - 1), fresh);
  }

  /**
   * Makes a hipped part of each piece of ground, such as the outlines of a drawing.
   *
   * @param grounds in the plan's unit, rings turned as {@link Region} says
   */
  public static Command ofGrounds(List<Region> grounds) {
    return Command.of(
        Messages.text("do.grounds", grounds.size()),
        plan -> {
          Plan with = plan;
          for (Region ground : grounds) {
            Part part = hipped(with, stem(with), ground.shell());
            int sides = ground.shell().size();
            for (Ring hole : ground.holes()) {
              sides += hole.size();
            }
            List<Edge> edges = Collections.nCopies(sides, Edge.of(EdgeKind.EAVE));
            with = with.withPart(part.withShape(ground.shell(), ground.holes(), edges));
          }
          return with;
        });
  }

  /** What a plain new part is called: the first one the house. */
  public static String stem(Plan plan) {
    return plan.parts().isEmpty() ? "main" : "part";
  }

  private static Part like(Part last, Part fresh) {
    return fresh
        .withPlateHeight(last.plateHeight())
        .withFrame(last.frame().elsewhere())
        .withDeck(last.deck());
  }
}
