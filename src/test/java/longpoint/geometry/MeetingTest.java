package longpoint.geometry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class MeetingTest {
  private static Segment line(double x1, double y1, double x2, double y2) {
    return new Segment(new Point(x1, y1), new Point(x2, y2));
  }

  @Test
  void segmentsMeetWhereTheyCrossTouchOrLieTogether() {
    assertThat(Meeting.of(line(0, 0, 4, 4), line(0, 4, 4, 0))).contains(new Point(2, 2));
    assertThat(Meeting.of(line(0, 0, 4, 0), line(2, 0, 2, 9))).contains(new Point(2, 0));
    assertThat(Meeting.of(line(0, 0, 4, 0), line(2, 0, 8, 0))).contains(new Point(3, 0));
    assertThat(Meeting.of(line(0, 0, 4, 0), line(5, -1, 5, 1))).isEmpty();
  }

  @Test
  void ringsHoldWhatIsInsideOrOnThem() {
    Ring square = Ring.of(0, 0, 4, 0, 4, 4, 0, 4);
    assertThat(Meeting.holds(square, new Point(2, 2))).isTrue();
    assertThat(Meeting.holds(square.reversed(), new Point(4, 2))).isTrue();
    assertThat(Meeting.holds(square, new Point(5, 2))).isFalse();
  }

  @Test
  void sharedGroundLeavesHolesOut() {
    Ring square = Ring.of(0, 0, 4, 0, 4, 4, 0, 4);
    Region ringed = new Region(square, List.of(Ring.of(1, 1, 1, 3, 3, 3, 3, 1)));
    assertThat(Meeting.sharedArea(new Region(square), ringed)).isEqualTo(12);
    assertThat(Meeting.sharedArea(ringed, new Region(Ring.of(2, 2, 6, 2, 6, 6, 2, 6))))
        .isEqualTo(3);
    assertThat(Meeting.sharedArea(ringed, new Region(Ring.of(4, 0, 8, 0, 8, 4, 4, 4))))
        .isEqualTo(0);
  }
}
