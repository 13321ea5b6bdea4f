package longpoint.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import longpoint.geometry.Point;
import longpoint.geometry.Region;
import longpoint.geometry.Ring;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PickTest {
  private static final Layer LAYER = new Layer("ANY", "Any", Pen.solid(0.25), Ink.MAIN);

  /** A tinted square with a wall below it, a label in it, and a group that holds a far line. */
  private static final List<Mark> MARKS =
      List.of(
          new Mark.Fill(new Region(Ring.of(0, 0, 100, 0, 100, 100, 0, 100)), LAYER, "plane"),
          Mark.Path.line(new Point(0, 0), new Point(100, 0), LAYER, "wall"),
          new Mark.Text(new Point(50, 50), "Hall", 5, 0, Anchor.CENTRE, LAYER, "label"),
          new Mark.Group(
              "away",
              new Placement(new Point(200, 0), 2, 90),
              List.of(Mark.Path.line(new Point(0, 0), new Point(10, 0), LAYER, "turned"))));

  @ParameterizedTest
  @CsvSource({
    "50, 2, wall",
    "50, -2, wall",
    "50, 10, plane",
    "50, 50, label",
    "50, 56, plane",
    "201, 19, turned",
    "201, 24, ''",
    "50, -20, ''",
    "150, 50, ''"
  })
  void findsWhatLiesUnderThePointer(double x, double y, String subject) {
    assertThat(Pick.at(MARKS, new Point(x, y), 3, 1).map(Pick::subject).orElse(""))
        .isEqualTo(subject);
  }
}
