package longpoint.desktop;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JComponent;
import longpoint.desktop.panel.HoldsPopup;
import longpoint.editor.Snap;
import longpoint.editor.ToolRunner;
import longpoint.units.LengthUnit;

/** How the user likes the pointer to be held, kept from one run to the next. */
final class Holds {
  private final ToolRunner runner;
  private final Settings kept;
  private LengthUnit unit;

  private Holds(ToolRunner runner, Settings kept) {
    this.runner = runner;
    this.kept = kept;
  }

  /** Takes up the kept habits now, and the grid's step whenever a plan has another unit. */
  static Holds of(ToolRunner runner, Settings kept) {
    Holds holds = new Holds(runner, kept);
    runner.onChange(holds::follow);
    runner.use(runner.settings().withSnaps(snaps(kept.holdsOff())));
    return holds;
  }

  private void follow() {
    LengthUnit now = runner.document().plan().unit();
    if (now != unit) {
      unit = now;
      kept.grid(now).ifPresent(g -> runner.use(runner.settings().withGrid(g)));
    }
  }

  private static Set<Snap.Kind> snaps(Set<String> off) {
    return Stream.of(Snap.Kind.values())
        .filter(k -> !off.contains(k.name()))
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Snap.Kind.class)));
  }

  void open(JComponent under) {
    HoldsPopup.open(runner, this::keep, under);
  }

  private void keep(longpoint.editor.Settings settings) {
    kept.setHoldsOff(
        Stream.of(Snap.Kind.values())
            .filter(k -> !settings.snaps().contains(k))
            .map(Enum::name)
            .collect(Collectors.toSet()));
    kept.setGrid(runner.document().plan().unit(), settings.grid());
  }
}
