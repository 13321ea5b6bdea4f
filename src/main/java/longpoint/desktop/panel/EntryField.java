package longpoint.desktop.panel;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.text.AbstractDocument;
import javax.swing.text.AttributeSet;
import javax.swing.text.BadLocationException;
import javax.swing.text.DocumentFilter;
import longpoint.desktop.Texts;
import longpoint.units.EntryException;
import net.miginfocom.swing.MigLayout;

/**
 * A field for one figure or word. Enter or leaving the field hands what was typed on; Escape puts
 * back what stood there. What cannot be read stays as typed, with the reason in words under it and
 * the caret where reading stopped. A field that may be left empty shows in grey what then holds.
 *
 * @param <T> what is read
 */
public final class EntryField<T> extends JPanel {
  private static final long serialVersionUID = 1;

  /** Turns what was typed into a value. */
  public interface Reading<T> {
    T read(String typed) throws EntryException;
  }

  private final JTextField field = new JTextField();
  private final Words wrong = new Words(Words.Rank.WRONG, "");
  private final transient Reading<T> reading;
  private final transient Consumer<T> commit;
  private transient Optional<Runnable> clear = Optional.empty();
  private String shown = "";

  /**
   * @param name of the field for tests, and the key of its tool tip
   * @param label as it is read out by a screen reader
   */
  public EntryField(String name, String label, Reading<T> reading, Consumer<T> commit) {
    super(new MigLayout("insets 0, gap 0, fillx, hidemode 3, wrap 1", "[grow,fill]"));
    this.reading = reading;
    this.commit = commit;
    setOpaque(false);
    field.setName(name);
    field.getAccessibleContext().setAccessibleName(label);
    wrong.setVisible(false);
    wrong.setName(name + ".wrong");
    add(field, "wmin 40, w 40:40:");
    add(wrong, "gaptop 2");
    field.addActionListener(e -> take());
    field.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusGained(FocusEvent e) {
            field.selectAll();
          }

          @Override
          public void focusLost(FocusEvent e) {
            if (!e.isTemporary()) {
              take();
            }
          }
        });
    field.addKeyListener(
        new KeyAdapter() {
          @Override
          public void keyPressed(KeyEvent e) {
            if (e.getKeyCode() == KeyEvent.VK_ESCAPE && !field.getText().equals(shown)) {
              show(shown);
              e.consume();
            }
          }
        });
  }

  /** Lets the field be left empty. */
  public EntryField<T> orEmpty(Runnable clear) {
    this.clear = Optional.of(clear);
    return this;
  }

  /** Keeps the lines of a pasted list apart, with semicolons. */
  public EntryField<T> takingLines() {
    ((AbstractDocument) field.getDocument()).setDocumentFilter(new LinesAsList());
    return this;
  }

  private static final class LinesAsList extends DocumentFilter {
    private static String list(String text) {
      return text.strip().replaceAll("\\s*\\R\\s*", "; ");
    }

    @Override
    public void insertString(FilterBypass in, int at, String text, AttributeSet set)
        throws BadLocationException {
      in.insertString(at, text.contains("\n") ? list(text) : text, set);
    }

    @Override
    public void replace(FilterBypass in, int at, int length, String text, AttributeSet set)
        throws BadLocationException {
      boolean lines = text != null && text.contains("\n");
      in.replace(at, length, lines ? list(text) : text, set);
    }
  }

  /** Shows a value as it would be typed, unless the user is in the middle of typing another. */
  public void update(String text, String whenEmpty) {
    field.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, whenEmpty);
    if (!shown.equals(text) || !field.hasFocus()) {
      show(text);
    }
  }

  public JTextField field() {
    return field;
  }

  private void show(String text) {
    shown = text;
    if (!field.getText().equals(text)) {
      field.setText(text);
    }
    right();
  }

  private void take() {
    String typed = field.getText().strip();
    if (typed.equals(shown)) {
      right();
      return;
    }
    if (typed.isEmpty() && clear.isPresent()) {
      shown = "";
      right();
      clear.get().run();
      return;
    }
    try {
      T value = reading.read(typed);
      shown = typed;
      right();
      commit.accept(value);
    } catch (EntryException e) {
      wrong(e);
    }
  }

  private void wrong(EntryException e) {
    field.putClientProperty(FlatClientProperties.OUTLINE, FlatClientProperties.OUTLINE_ERROR);
    wrong.setText(Html.wrapped(e.message(Texts.language()), Math.max(160, getWidth() - 12)));
    field.getAccessibleContext().setAccessibleDescription(e.message(Texts.language()));
    wrong.setVisible(true);
    field.setCaretPosition(Math.min(e.position(), field.getText().length()));
    revalidate();
  }

  private void right() {
    field.putClientProperty(FlatClientProperties.OUTLINE, null);
    field.getAccessibleContext().setAccessibleDescription(null);
    if (wrong.isVisible()) {
      wrong.setVisible(false);
      revalidate();
    }
  }
}
