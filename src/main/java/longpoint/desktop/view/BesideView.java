package longpoint.desktop.view;

import java.awt.datatransfer.Transferable;
import java.util.Optional;
import javax.swing.JComponent;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.desktop.paper.SheetCopy;

/** One of the views beside the plan. Only the one that is shown is told anything. */
public interface BesideView extends AutoCloseable {
  /** With its own buttons over it. */
  JComponent component();

  /** What takes the keyboard. */
  JComponent heart();

  /** Shows the newest design; called again and again, and does nothing when it is shown already. */
  void follow();

  /** Shows what is picked. */
  void showPicks();

  /** Brings its buttons up to date. */
  void refresh();

  /** Another plan: what was shown of the last one is of no use. */
  void startOver();

  /**
   * Takes the look in force.
   *
   * @param lettering 1 for ordinary eyes, more for larger letters
   */
  void dress(CanvasColours colours, double lettering);

  /** The thing after or before the one shown, where there are several. */
  void step(int by);

  /** What goes to the clipboard when the view has the keyboard; empty when there is nothing. */
  Optional<Transferable> copied(SheetCopy.As as);

  /** The window closes: whatever still works for this view stops. */
  @Override
  void close();
}
