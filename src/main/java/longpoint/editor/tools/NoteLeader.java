package longpoint.editor.tools;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import longpoint.editor.Aim;
import longpoint.editor.Entry;
import longpoint.editor.Event;
import longpoint.editor.Messages;
import longpoint.editor.Overlay;
import longpoint.editor.Pointer;
import longpoint.editor.Scene;
import longpoint.editor.Snap;
import longpoint.editor.Snapper;
import longpoint.editor.Step;
import longpoint.editor.ToolState;
import longpoint.geometry.Point;

/**
 * A note points at something and waits for the place of its words. A second click on the spot puts
 * the words there, without a leader. Words typed straight away stand where the pointer is.
 *
 * @param tip what it points at
 */
record NoteLeader(Point tip, Snap pointed) implements ToolState {
  /** How a note begins. */
  static final Opening BEGINNING =
      new Opening() {
        @Override
        public Step begin(Snap here, Pointer pointer, FirstPoint waiting, Scene scene) {
          return Step.to(new NoteLeader(here.at(), here));
        }

        @Override
        public Optional<Step> begin(Snap here, Scene scene) {
          return Optional.of(Step.to(new NoteWriting(here.at(), Optional.empty())));
        }

        @Override
        public String invites(Scene scene) {
          return Messages.text("note.first");
        }
      };

  @Override
  public Step on(Event event, Scene scene) {
    if (event instanceof Event.Typed) {
      return writing().on(event, scene);
    }
    if (!(event instanceof Event.Pointing pointing) || event instanceof Event.DoubleClicked) {
      return Step.to(this);
    }
    Pointer pointer = pointing.pointer();
    Snap snap = Snapper.snap(scene.plan(), scene.settings(), Aim.at(pointer));
    NoteLeader next = new NoteLeader(tip, snap);
    boolean ends =
        event instanceof Event.Pressed
            || event instanceof Event.Released && Holding.pulled(tip, pointer);
    return Step.to(ends ? next.writing() : next);
  }

  private NoteWriting writing() {
    boolean apart = !pointed.at().equals(tip);
    return new NoteWriting(pointed.at(), apart ? Optional.of(tip) : Optional.empty());
  }

  @Override
  public Optional<ToolState> back() {
    return Optional.of(new FirstPoint(BEGINNING, Optional.of(pointed)));
  }

  @Override
  public Optional<Point> keyed(Scene scene) {
    return Optional.of(pointed.at());
  }

  @Override
  public Overlay overlay(Scene scene) {
    return Overlay.NONE
        .withLines(Rubber.lines(List.of(tip, pointed.at())))
        .withSnap(Optional.of(pointed));
  }

  @Override
  public String status(Scene scene) {
    return Messages.text("note.second");
  }

  @Override
  public Set<Entry.Kind> wants() {
    return Set.of(Entry.Kind.WORDS);
  }
}
