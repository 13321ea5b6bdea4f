package longpoint.framing.stick;

import java.util.List;
import java.util.Optional;
import longpoint.framing.run.Meeting;
import longpoint.framing.run.Run;
import longpoint.geometry.Plane;
import longpoint.geometry.Point;

/**
 * The rafters of a run whose outline reaches in under the roof it meets, as a dormer's does: only
 * what stands clear of that roof is framed, and its ends lie on it.
 */
final class OverRoof {
  private final Run run;
  private final Plane under;
  private final boolean through;
  private final double thickness;

  private OverRoof(Meeting meeting) {
    this.run = meeting.upper();
    this.under = meeting.beneath();
    this.through = meeting.manner().isThrough();
    this.thickness = run.part().frame().thickness();
  }

  /**
   * @param sticks of the upper run
   * @param meetings of the whole plan
   */
  static List<Stick> clear(List<Stick> sticks, Run run, List<Meeting> meetings) {
    List<Stick> clear = sticks;
    for (Meeting m : meetings) {
      if (m.upper().id().equals(run.id()) && m.lower().bound(m.bank()).isEave()) {
        OverRoof over = new OverRoof(m);
        clear = clear.stream().flatMap(s -> over.clear(s).stream()).toList();
      }
    }
    return clear;
  }

  private double above(Point p) {
    return run.heightAt(run.axes().u(p), run.axes().v(p)) - under.heightAt(p);
  }

  private Optional<Stick> clear(Stick s) {
    double foot = above(s.foot());
    double head = above(s.head());
    double least = thickness / 4;
    if (foot >= -least && head >= -least) {
      return Optional.of(s);
    }
    if (foot < least && head < least) {
      return Optional.empty();
    }
    Point at = s.foot().toward(s.head(), foot / (foot - head));
    Stick cut = foot < head ? fromRoof(s, at) : intoRoof(s, at);
    double left = cut.line().run() - cut.atFoot().off() - cut.atHead().off();
    return left > thickness ? Optional.of(cut) : Optional.empty();
  }

  /** Its foot stands on the roof beneath. */
  private Stick fromRoof(Stick s, Point at) {
    RafterKind kind =
        switch (s.kind()) {
          case COMMON -> RafterKind.VALLEY_JACK;
          case HIP_JACK -> RafterKind.CRIPPLE;
          case HIP, VALLEY, VALLEY_JACK, CRIPPLE, RIDGE, TRIMMER, HEADER -> s.kind();
        };
    Joint foot =
        s.kind() == RafterKind.RIDGE
            ? ridgeEnd()
            : through
                ? Joint.against(Bearing.VALLEY, thickness, s.up().times(-1), s.up(), meetingLine(s))
                : Joint.onDeck(under, s.up(), s.slope());
    return Stick.of(kind, s.part(), s.run(), at, s.head(), s.slope())
        .withOver(s.over())
        .withFoot(foot)
        .withHead(s.atHead())
        .withFalls(s.falls())
        .withRow(s.row().isEmpty() && kind == RafterKind.VALLEY_JACK ? "roof" + side(s) : s.row());
  }

  /** Looking along the run, the side a rafter comes up from. */
  private String side(Stick s) {
    return s.up().dot(run.axes().along().left()) > 0 ? "-low" : "-high";
  }

  /** It runs up into the roof beneath. */
  private Stick intoRoof(Stick s, Point at) {
    Joint head =
        s.kind() == RafterKind.RIDGE ? ridgeEnd() : Joint.headOnDeck(under, s.up(), s.slope());
    return s.between(s.foot(), at).withOver(0).withHead(head);
  }

  /** On the deck, or against the header of an opening. */
  private Joint ridgeEnd() {
    return through ? Joint.square(Bearing.HEADER, thickness / 2) : Joint.square(Bearing.DECK, 0);
  }

  /** Direction of the line where the rafter's plane meets the roof beneath. */
  private Point meetingLine(Stick s) {
    Point up = s.up().unit().times(s.slope());
    return new Point(up.x() - under.a(), up.y() - under.b()).left();
  }
}
