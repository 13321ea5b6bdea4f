package longpoint.desktop.canvas;

import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;

/** Takes clicks on the signs of problems, and hands everything else on. */
public final class BadgeGestures implements Gestures {
  private final Gestures rest;
  private final ProblemBadges badges;
  private final BooleanSupplier free;
  private final Consumer<ProblemBadges.Badge> open;
  private boolean held;

  /**
   * @param free whether no gesture is under way that a click might belong to
   * @param open told which sign was clicked
   */
  public BadgeGestures(
      Gestures rest,
      ProblemBadges badges,
      BooleanSupplier free,
      Consumer<ProblemBadges.Badge> open) {
    this.rest = rest;
    this.badges = badges;
    this.free = free;
    this.open = open;
  }

  @Override
  public void pointer(MouseEvent event, View view) {
    var badge = badges.under(view, event.getX(), event.getY());
    if (event.getID() == MouseEvent.MOUSE_PRESSED && badge.isPresent() && free.getAsBoolean()) {
      held = true;
    } else if (held && event.getID() == MouseEvent.MOUSE_RELEASED) {
      held = false;
      badge.ifPresent(open);
    } else if (!held) {
      rest.pointer(event, view);
    }
  }

  @Override
  public boolean key(KeyEvent event) {
    return rest.key(event);
  }

  @Override
  public boolean typing() {
    return rest.typing();
  }

  @Override
  public boolean engaged() {
    return !held && rest.engaged();
  }

  @Override
  public void menu(MouseEvent event, View view) {
    rest.menu(event, view);
  }
}
