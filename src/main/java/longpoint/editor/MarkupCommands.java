package longpoint.editor;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import longpoint.plan.Backdrop;
import longpoint.plan.Markup;
import longpoint.plan.Note;
import longpoint.plan.Plan;
import longpoint.plan.PlanDimension;

/** Edits of what lies on the sheet besides the building. What has gone is passed over. */
public final class MarkupCommands {
  private MarkupCommands() {}

  /** Puts other words into a note; without any it goes. */
  public static Command words(String note, String text) {
    return text.isBlank()
        ? Command.of(Messages.text("do.note"), p -> without(p, List.of(new Ref.OfNote(note))))
        : note(note, n -> n.withText(text.strip()));
  }

  /** Takes the leader of a note away. */
  public static Command withoutLeader(String note) {
    return note(note, n -> n.withPointsAt(Optional.empty()));
  }

  private static Command note(String id, UnaryOperator<Note> edit) {
    return markup("do.note", m -> m.note(id).map(edit).map(m::with).orElse(m));
  }

  /** Sets what a dimension measures along, and where its line lies. */
  public static Command dimension(String id, UnaryOperator<PlanDimension> edit) {
    return markup("do.dimension", m -> m.dimension(id).map(edit).map(m::with).orElse(m));
  }

  /** Lays a picture beneath the plan, in place of one that lies there. */
  public static Command backdrop(Backdrop picture) {
    return markup("do.backdrop", m -> m.withBackdrop(Optional.of(picture)));
  }

  /** Changes the picture beneath. */
  public static Command backdrop(UnaryOperator<Backdrop> edit) {
    return markup("do.backdrop.change", m -> m.withBackdrop(m.backdrop().map(edit)));
  }

  private static Command markup(String key, UnaryOperator<Markup> edit) {
    return Command.of(Messages.text(key), p -> p.withMarkup(edit.apply(p.markup())));
  }

  /** The plan without some notes, dimensions or the picture. */
  static Plan without(Plan plan, List<Ref> refs) {
    Markup rest = plan.markup();
    for (Ref ref : refs) {
      if (ref instanceof Ref.OfNote note) {
        rest = rest.without(note.note());
      } else if (ref instanceof Ref.OfDimension dimension) {
        rest = rest.without(dimension.dimension());
      } else if (ref instanceof Ref.OfBackdrop) {
        rest = rest.withBackdrop(Optional.empty());
      }
    }
    return plan.withMarkup(rest);
  }
}
