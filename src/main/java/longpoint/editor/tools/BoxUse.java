package longpoint.editor.tools;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.NewPart;
import longpoint.editor.Picker;
import longpoint.editor.Pointer;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Step;
import longpoint.geometry.Point;
import longpoint.geometry.Ring;
import longpoint.geometry.Segment;
import longpoint.plan.Edge;
import longpoint.plan.EdgeKind;
import longpoint.plan.Part;
import longpoint.plan.Plan;
import longpoint.plan.Reshape;

/** What a box drawn by two corners becomes. */
enum BoxUse implements Opening {
  /** A part with eaves along its longer sides. */
  PART {
    @Override
    Optional<Part> part(Plan plan, Ring box) {
      return Optional.of(NewPart.gabled(plan, NewPart.stem(plan), box));
    }
  },
  /** A hole in the part it lies in, with eaves all round. */
  COURTYARD {
    @Override
    Optional<Part> part(Plan plan, Ring box) {
      return Picker.part(plan, box.bounds().middle())
          .map(Ref.OfPart::part)
          .flatMap(plan::part)
          .filter(p -> box.points().stream().allMatch(c -> inside(plan, p, c)))
          .filter(p -> clear(p, box))
          .map(p -> Reshape.addHole(p, box, Edge.of(EdgeKind.EAVE)));
    }
  };

  /** The part as it will be; empty when the box cannot be used. */
  abstract Optional<Part> part(Plan plan, Ring box);

  @Override
  public Step begin(Snap here, Pointer pointer, FirstPoint waiting, Scene scene) {
    return Step.to(new OppositeCorner(this, here.at(), here));
  }

  @Override
  public Step typed(Entry entry, Snap here, Scene scene) {
    return new OppositeCorner(this, here.at(), here).on(new Event.Typed(entry), scene);
  }

  @Override
  public Set<Entry.Kind> wantsFirst() {
    return Set.of(Entry.Kind.SIZE, Entry.Kind.LENGTH);
  }

  @Override
  public String invites(Scene scene) {
    return text("first");
  }

  /** What is said of the box in words. */
  String text(String what, Object... parts) {
    return Messages.text(name().toLowerCase(Locale.ROOT) + "." + what, parts);
  }

  private static boolean inside(Plan plan, Part part, Point corner) {
    return Picker.part(plan.withParts(List.of(part)), corner).isPresent();
  }

  private static boolean clear(Part part, Ring box) {
    for (int i = 0; i < part.sideCount(); i++) {
      Segment wall = part.side(i);
      for (int k = 0; k < box.size(); k++) {
        if (Loop.meet(wall, box.side(k))) {
          return false;
        }
      }
    }
    return true;
  }
}
