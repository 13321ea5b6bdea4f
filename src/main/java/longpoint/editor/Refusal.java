package longpoint.editor;

import java.util.Optional;
import longpoint.geometry.Point;

/** Why the last thing could not be done, for as long as it is worth reading. */
final class Refusal {
  /**
   * It stays to be read until the pointer has gone this many times its reach away: some two hundred
   * pixels, a hand's deliberate move and not its tremble.
   */
  private static final double READING_ROOM = 30;

  private Optional<String> why = Optional.empty();
  private Optional<Point> last = Optional.empty();
  private Optional<Point> saidAt = Optional.empty();

  Optional<String> why() {
    return why;
  }

  void say(String words) {
    why = Optional.of(words);
    saidAt = last;
  }

  void forget() {
    why = Optional.empty();
  }

  /** Forgets it unless it is still being read: nothing new is tried and the hand is still. */
  void forgetUnlessRead(Event event) {
    if (!read(event)) {
      forget();
    }
  }

  private boolean read(Event event) {
    if (!(event instanceof Event.Pointing pointing)) {
      return false;
    }
    Point at = pointing.pointer().at();
    last = Optional.of(at);
    double room = READING_ROOM * pointing.pointer().reach();
    return !(event instanceof Event.Pressed)
        && saidAt.filter(r -> r.distance(at) <= room).isPresent();
  }
}
