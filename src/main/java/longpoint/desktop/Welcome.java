package longpoint.desktop;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.SwingUtilities;
import longpoint.desktop.canvas.PlanCanvas;
import longpoint.desktop.panel.StartCard;
import longpoint.editor.tools.Tools;

/** Keeps the card of beginnings on the sheet as long as there is nothing else on it. */
final class Welcome {
  /** Free pixels left and right of the card. */
  private static final int MARGIN = 30;

  private final PlanCanvas canvas;
  private final Settings settings;
  private final Beginnings beginnings;
  private Optional<StartCard> card = Optional.empty();

  Welcome(PlanCanvas canvas, Settings settings, Beginnings beginnings) {
    this.canvas = canvas;
    this.settings = settings;
    this.beginnings = beginnings;
    canvas.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            card.ifPresent(Welcome.this::fit);
          }
        });
  }

  /** Shows the card on an empty sheet that nobody draws on, and takes it off any other. */
  void follow(Job job) {
    boolean idle =
        job.runner().shown().parts().isEmpty()
            && job.runner().tool() == Tools.SELECT
            && !job.runner().previewing();
    if (idle) {
      putOn();
    } else if (card.isPresent()) {
      takeOff();
    }
  }

  /** Shows the card, if it is not there. */
  void putOn() {
    if (card.isEmpty()) {
      StartCard wide = made(StartCard.Lines.TWO_COLUMNS);
      putOn(wide);
      if (canvas.getWidth() > 0) {
        fit(wide);
      }
    }
  }

  private void putOn(StartCard made) {
    made.on(canvas);
    card = Optional.of(made);
    canvas.revalidate();
  }

  /** In one column where two have no room. */
  private void fit(StartCard now) {
    boolean wide = now.lines() == StartCard.Lines.TWO_COLUMNS;
    StartCard widest = wide ? now : made(StartCard.Lines.TWO_COLUMNS);
    boolean room = widest.getPreferredSize().width <= canvas.getWidth() - 2 * MARGIN;
    if (room != wide) {
      takeOff();
      putOn(room ? widest : made(StartCard.Lines.ONE_COLUMN));
    }
  }

  private void takeOff() {
    card.ifPresent(canvas::remove);
    card = Optional.empty();
    canvas.repaint();
  }

  private StartCard made(StartCard.Lines lines) {
    return new StartCard(
        lines,
        beginnings.offered(),
        beginnings::sample,
        List.copyOf(settings.recent()),
        beginnings::open);
  }

  /** Takes another look. */
  void dress() {
    card.ifPresent(SwingUtilities::updateComponentTreeUI);
  }
}
