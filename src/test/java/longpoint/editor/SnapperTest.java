package longpoint.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import longpoint.geometry.Point;
import longpoint.plan.Plan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where a pointer is held, and the reason given. The house is 480 by 336; reach is 4, grid 6. */
@ExtendWith(EnglishWords.class)
class SnapperTest {
  private static final Plan HOUSE = Houses.house();
  private static final Settings SETTINGS = Settings.of(HOUSE.unit());

  private static void check(Snap snap, double x, double y, Snap.Kind kind, String reason) {
    assertThat(snap.reason()).isEqualTo(reason);
    assertThat(snap.kind()).isEqualTo(kind);
    assertThat(snap.at()).isEqualTo(new Point(x, y));
  }

  private static Aim aim(double x, double y, Modifier... held) {
    return Aim.at(new Pointer(x, y, Hand.REACH, held));
  }

  private static Snap snap(Aim aim) {
    return Snapper.snap(HOUSE, SETTINGS, aim);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # pointer    | held at   | kind     | reason
          482   | 2    | 480 | 0   | CORNER   | on a corner of House
          479   | 333  | 480 | 336 | CORNER   | on a corner of House
          242   | -3   | 240 | 0   | MIDDLE   | on the middle of the south wall of House
          479   | 170  | 480 | 168 | MIDDLE   | on the middle of the east wall of House
          100   | 2    | 102 | 0   | ON_SIDE  | on the south wall of House
          400   | -2   | 402 | 0   | ON_SIDE  | on the south wall of House
          1     | 100  | 0   | 102 | ON_SIDE  | on the west wall of House
          600   | 2    | 600 | 0   | IN_LINE  | in line with the south wall of House
          -100  | 339  | -102| 336 | IN_LINE  | in line with the north wall of House
          481   | -97  | 480 | -96 | IN_LINE  | in line with the east wall of House
          200   | 100  | 198 | 102 | GRID     | on the grid
          """)
  void thePointerIsHeldForAReason(
      double px, double py, double x, double y, Snap.Kind kind, String reason) {
    check(snap(aim(px, py)), x, y, kind, reason);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # pulled from 600, 90: pointer | held at | kind | reason
          700 | 92  | 702 | 90  | SQUARE   | square to the east wall of House
          602 | 200 | 600 | 198 | SQUARE   | parallel to the east wall of House
          601 | 338 | 600 | 336 | CROSSING | in line with the north wall of House, and parallel to the east wall of House
          700 | 2   | 702 | 0   | IN_LINE  | in line with the south wall of House
          700 | 160 | 702 | 162 | GRID     | in steps of 0'-6"
          """)
  void aLineIsHeldSquareToWhatIsThere(
      double px, double py, double x, double y, Snap.Kind kind, String reason) {
    check(snap(aim(px, py).lineFrom(new Point(600, 90))), x, y, kind, reason);
  }

  @Test
  void aLineAt45DegreesKeepsWholeSteps() {
    Snap snap = snap(aim(640, 131).lineFrom(new Point(600, 90)));
    check(snap, 642, 132, Snap.Kind.SQUARE, "at 45° to the east wall of House");
    snap = snap(aim(640, 49).lineFrom(new Point(600, 90)));
    check(snap, 642, 48, Snap.Kind.SQUARE, "at 45° to the east wall of House");
  }

  @Test
  void guidanceIsThreeDegreesWideAtAnyZoom() {
    Point from = new Point(1000, 1000);
    assertThat(snap(aim(2000, 1052).lineFrom(from)).kind()).isEqualTo(Snap.Kind.SQUARE);
    assertThat(snap(aim(2000, 1053).lineFrom(from)).kind()).isEqualTo(Snap.Kind.GRID);
  }

  @Test
  void modifiersLetGo() {
    assertThat(snap(aim(482, 2, Modifier.ALT)).isFree()).isTrue();
    assertThat(snap(aim(482, 2, Modifier.ALT)).at()).isEqualTo(new Point(482, 2));
    Aim shifted = aim(700, 92, Modifier.SHIFT).lineFrom(new Point(600, 90));
    check(snap(shifted), 702, 90, Snap.Kind.GRID, "in steps of 0'-6\"");
    check(snap(aim(482, 2, Modifier.SHIFT)), 480, 0, Snap.Kind.CORNER, "on a corner of House");
  }

  @Test
  void settingsSwitchKindsOff() {
    Settings onlyGrid = SETTINGS.withSnaps(Set.of(Snap.Kind.GRID));
    check(Snapper.snap(HOUSE, onlyGrid, aim(482, 2)), 480, 0, Snap.Kind.GRID, "on the grid");
    Settings none = SETTINGS.withSnaps(Set.of());
    assertThat(Snapper.snap(HOUSE, none, aim(482, 2)).isFree()).isTrue();
    Settings noGrid = SETTINGS.withGrid(0);
    assertThat(Snapper.snap(HOUSE, noGrid, aim(200.3, 100.7)).isFree()).isTrue();
    check(
        Snapper.snap(HOUSE, noGrid, aim(100.5, 2)),
        100.5,
        0,
        Snap.Kind.ON_SIDE,
        "on the south wall of House");
  }

  @Test
  void whatIsDraggedDoesNotHoldThePointer() {
    Aim aim = aim(482, 2).leavingOut(Set.of(Ref.part("main")));
    check(snap(aim), 480, 0, Snap.Kind.GRID, "on the grid");
    Aim corner =
        aim(482, 3)
            .leavingOut(Set.of(Ref.corner("main", 1), Ref.side("main", 0), Ref.side("main", 1)));
    // The corner itself and its two walls are out; the lines of the other corners are not.
    check(snap(corner), 480, 0, Snap.Kind.CROSSING, "in line with a corner of House");
  }

  @Test
  void sidesDrawnSoFarGuideTheNextOne() {
    List<Point> drawn = List.of(new Point(1000, 0), new Point(1100, 50), new Point(1080, 90));
    Aim aim = aim(1061, 80).afterDrawing(drawn).lineFrom(drawn.get(2));
    assertThat(snap(aim).reason()).isEqualTo("square to the last side");
    Aim start = aim(1002, -1).afterDrawing(drawn).lineFrom(drawn.get(2));
    check(snap(start), 1000, 0, Snap.Kind.CORNER, "on the first corner");
  }

  @Test
  void guidesShowTheReason() {
    Snap snap = snap(aim(600, 2));
    assertThat(snap.guides()).hasSize(1);
    assertThat(snap.guides().get(0).to()).isEqualTo(snap.at());
    assertThat(snap.guides().get(0).offset(new Point(0, 0))).isZero();
  }
}
