package longpoint.desktop;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.swing.SwingUtilities;
import longpoint.desktop.action.Catalogue;
import longpoint.desktop.canvas.PlanCanvas;
import longpoint.desktop.file.FileFlow;
import longpoint.desktop.panel.StartCard;
import longpoint.editor.tools.Tools;

/** Keeps the card of beginnings on the sheet as long as there is nothing else on it. */
final class Welcome {
  /** Free pixels left and right of the card. */
  private static final int MARGIN = 30;

  private final PlanCanvas canvas;
  private final Job job;
  private final Settings settings;
  private final FileFlow files;
  private final Catalogue catalogue;
  private Optional<StartCard> card = Optional.empty();

  Welcome(PlanCanvas canvas, Job job, Settings settings, FileFlow files, Catalogue catalogue) {
    this.canvas = canvas;
    this.job = job;
    this.settings = settings;
    this.files = files;
    this.catalogue = catalogue;
    canvas.addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            if (card.isPresent()) {
              takeOff();
              follow();
            }
          }
        });
  }

  /** Shows the card on an empty sheet that nobody draws on, and takes it off any other. */
  void follow() {
    boolean idle =
        job.runner().shown().parts().isEmpty()
            && job.runner().tool() == Tools.SELECT
            && !job.runner().previewing();
    if (idle && card.isEmpty()) {
      StartCard made = fitting();
      made.on(canvas);
      card = Optional.of(made);
      canvas.revalidate();
    } else if (!idle && card.isPresent()) {
      takeOff();
    }
  }

  private void takeOff() {
    card.ifPresent(canvas::remove);
    card = Optional.empty();
    canvas.repaint();
  }

  /** In one column where two have no room. */
  private StartCard fitting() {
    StartCard wide = made(StartCard.Lines.TWO_COLUMNS);
    boolean narrow = canvas.getWidth() > 0 && wide.getPreferredSize().width > room();
    return narrow ? made(StartCard.Lines.ONE_COLUMN) : wide;
  }

  private int room() {
    return canvas.getWidth() - 2 * MARGIN;
  }

  private StartCard made(StartCard.Lines lines) {
    return new StartCard(
        lines,
        Stream.of("tool.rectangle", "tool.outline", "file.open", "file.new.mm")
            .map(catalogue::task)
            .toList(),
        files::sample,
        List.copyOf(settings.recent()),
        files::open);
  }

  /** Takes another look. */
  void dress() {
    card.ifPresent(SwingUtilities::updateComponentTreeUI);
  }
}
