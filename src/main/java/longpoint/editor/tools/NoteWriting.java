package longpoint.editor.tools;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Overlay;
import longpoint.editor.PointerShape;
import longpoint.editor.Ref;
import longpoint.editor.Scene;
import longpoint.editor.Selection;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;
import longpoint.plan.Extras;
import longpoint.plan.Markup;
import longpoint.plan.Note;

/**
 * A note has its place and waits for its words.
 *
 * @param at where they start
 * @param tip what it points at
 */
record NoteWriting(Point at, Optional<Point> tip) implements ToolState {
  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Typed typed && typed.entry() instanceof Entry.Words words) {
      return words.text().isBlank() ? wordless() : written(words.text(), scene);
    }
    boolean enters = event instanceof Event.Pressing pressing && pressing.key() == Event.Key.ENTER;
    return enters || event instanceof Event.Pressed ? wordless() : Step.to(this);
  }

  private Step wordless() {
    return Step.refuse(this, Messages.text("note.words"));
  }

  private Step written(String words, Scene scene) {
    Markup markup = scene.plan().markup();
    Note note = new Note(markup.freshId("note"), at, tip, words, Extras.NONE);
    return Step.commit(
            new FirstPoint(NoteLeader.BEGINNING),
            Messages.text("note.done"),
            scene.plan().withMarkup(markup.with(note)))
        .selecting(Selection.of(new Ref.OfNote(note.id())));
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.of(new FirstPoint(NoteLeader.BEGINNING));
  }

  @Override
  public Overlay overlay(Scene scene) {
    List<Overlay.Handle> place = List.of(new Overlay.Handle(at, Optional.empty()));
    return Overlay.NONE
        .withLines(tip.map(t -> Rubber.lines(List.of(t, at))).orElse(List.of()))
        .withHandles(place);
  }

  @Override
  public PointerShape shape(Scene scene) {
    return PointerShape.WORDS;
  }

  @Override
  public String status(Scene scene) {
    return Messages.text("note.words");
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of(Entry.Kind.WORDS);
  }
}
