package longpoint.editor.tools;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.editor.Ref;
import longpoint.editor.Selection;
import longpoint.plan.Markup;
import longpoint.plan.Plan;

/** Picking without a pointer: from thing to thing, and from a part into its sides and corners. */
final class Walking {
  private Walking() {}

  /**
   * The thing after or before what was picked last, of its own kind: parts with notes, dimensions
   * and the picture; the sides of a part; its corners.
   *
   * @param step 1 or −1
   */
  static Optional<Ref> on(Plan plan, Selection picked, int step) {
    Optional<Ref> last = picked.refs().stream().reduce((a, b) -> b).filter(r -> r.in(plan));
    if (last.isPresent() && last.get() instanceof Ref.OfSide s) {
      return Optional.of(Ref.side(s.part(), around(plan, s.part(), s.side() + step)));
    }
    if (last.isPresent() && last.get() instanceof Ref.OfCorner c) {
      return Optional.of(Ref.corner(c.part(), around(plan, c.part(), c.corner() + step)));
    }
    List<Ref> all = whole(plan);
    int now = last.map(all::indexOf).orElse(-1);
    int start = now < 0 && step < 0 ? 0 : now;
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(all.get(Math.floorMod(start + step, all.size())));
  }

  private static int around(Plan plan, String part, int side) {
    return Math.floorMod(side, plan.part(part).orElseThrow().sideCount());
  }

  private static List<Ref> whole(Plan plan) {
    List<Ref> all = new ArrayList<>();
    plan.parts().forEach(p -> all.add(Ref.part(p.id())));
    Markup markup = plan.markup();
    markup.notes().forEach(n -> all.add(new Ref.OfNote(n.id())));
    markup.dimensions().forEach(d -> all.add(new Ref.OfDimension(d.id())));
    markup.backdrop().ifPresent(b -> all.add(new Ref.OfBackdrop()));
    return all;
  }

  /** From a part to its first side, from a side to the corner it starts at, from there back. */
  static Optional<Ref> into(Plan plan, Selection picked) {
    Optional<Ref> last = picked.refs().stream().reduce((a, b) -> b).filter(r -> r.in(plan));
    return last.filter(r -> !r.part().isEmpty())
        .map(
            r ->
                r instanceof Ref.OfPart
                    ? Ref.side(r.part(), 0)
                    : r instanceof Ref.OfSide s
                        ? Ref.corner(s.part(), s.side())
                        : Ref.part(r.part()));
  }
}
