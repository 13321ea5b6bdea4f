package longpoint.desktop.canvas;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import javax.swing.UIManager;

/**
 * Something to look at and not to draw on. It is moved by {@link Hand}; what was shown whole stays
 * whole when the window grows; what is clicked is told, what is picked stands out, and a frame says
 * that the keyboard is here. For the event thread only.
 */
public abstract class LookedAt extends JComponent implements Accessible, Hand.Held {
  private static final long serialVersionUID = 1;

  /** As thick as the rings around fields. */
  private static final int FRAME = 2;

  private transient CanvasColours colours = CanvasColours.light();
  private transient Set<String> picked = Set.of();
  private transient PickListener picks = (subject, how) -> {};
  private boolean fitted = true;

  /**
   * @param letters does what a letter stands for elsewhere in the window
   */
  protected LookedAt(String name, Predicate<Character> letters) {
    setName(name);
    setOpaque(true);
    setPreferredSize(new Dimension(560, 460));
    setMinimumSize(new Dimension(200, 150));
    Hand.on(this, letters);
    addComponentListener(
        new ComponentAdapter() {
          @Override
          public void componentResized(ComponentEvent e) {
            if (fitted) {
              fit();
            }
          }
        });
    addFocusListener(
        new FocusListener() {
          @Override
          public void focusGained(FocusEvent e) {
            repaint();
          }

          @Override
          public void focusLost(FocusEvent e) {
            repaint();
          }
        });
  }

  /** Whether all of it is shown and is to stay so. */
  protected final boolean isFitted() {
    return fitted;
  }

  protected final void setFitted(boolean fitted) {
    this.fitted = fitted;
  }

  /** What is seen at a place; empty for the ground. */
  public abstract Optional<String> at(int x, int y);

  /** Told what is clicked. */
  public final void onPick(PickListener picks) {
    this.picks = picks;
  }

  @Override
  public final void clicked(Point at, PickListener.How how) {
    picks.picked(at(at.x, at.y), how);
  }

  /** Subjects that stand out. */
  public final void setPicked(Set<String> subjects) {
    if (!subjects.equals(picked)) {
      picked = Set.copyOf(subjects);
      repaint();
    }
  }

  protected final Set<String> picked() {
    return picked;
  }

  public final void setColours(CanvasColours colours) {
    this.colours = colours;
    repaint();
  }

  protected final CanvasColours colours() {
    return colours;
  }

  /** The frame that says where the keyboard is. */
  protected final void frame(Graphics2D g) {
    if (isFocusOwner()) {
      g.setColor(UIManager.getColor("Component.focusColor"));
      g.fillRect(0, 0, getWidth(), FRAME);
      g.fillRect(0, getHeight() - FRAME, getWidth(), FRAME);
      g.fillRect(0, 0, FRAME, getHeight());
      g.fillRect(getWidth() - FRAME, 0, FRAME, getHeight());
    }
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJComponent() {
            private static final long serialVersionUID = 1;

            @Override
            public AccessibleRole getAccessibleRole() {
              return AccessibleRole.CANVAS;
            }
          };
    }
    return accessibleContext;
  }
}
