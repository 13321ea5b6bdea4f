package longpoint.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import longpoint.geometry.Point;

/**
 * Words the user put on the plan. Lettering keeps its size on paper, whatever the scale.
 *
 * @param id its own among the notes and dimensions of the plan
 * @param at where the words start
 * @param pointsAt what a leader runs to from the words; empty for words alone
 * @param text one line or several, divided by line feeds
 */
public record Note(String id, Point at, Optional<Point> pointsAt, String text, Extras extras) {
  public Note {
    Objects.requireNonNull(id);
    Objects.requireNonNull(at);
    Objects.requireNonNull(pointsAt);
    Objects.requireNonNull(text);
    Objects.requireNonNull(extras);
  }

  /** The lines, at least one. */
  public List<String> lines() {
    return List.of(text.split("\n", -1));
  }

  /** Whether the words stand to the left of what they point at, and so end where the leader is. */
  public boolean endsAtLeader() {
    return pointsAt.filter(p -> p.x() > at.x()).isPresent();
  }

  public Note withAt(Point at) {
    return new Note(id, at, pointsAt, text, extras);
  }

  public Note withPointsAt(Optional<Point> pointsAt) {
    return new Note(id, at, pointsAt, text, extras);
  }

  public Note withText(String text) {
    return new Note(id, at, pointsAt, text, extras);
  }
}
