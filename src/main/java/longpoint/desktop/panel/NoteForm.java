package longpoint.desktop.panel;

import java.awt.event.FocusAdapter;
import java.awt.event.FocusEvent;
import java.awt.event.InputEvent;
import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import longpoint.desktop.Texts;
import longpoint.editor.MarkupCommands;
import longpoint.editor.ToolRunner;
import longpoint.plan.Note;

/** Properties of one note: its words, and its leader. */
final class NoteForm implements Properties.Subject {
  private static final int ROWS = 4;

  private final ToolRunner runner;
  private final String id;
  private final Form form;
  private final JTextArea area = new JTextArea(ROWS, 10);
  private final JButton leader = new JButton(Texts.of("note.leader"));
  private String shown = "";

  NoteForm(ToolRunner runner, String id) {
    this.runner = runner;
    this.id = id;
    this.form = new Form(() -> Texts.of("form.note"));
    area.setName("note");
    area.setLineWrap(true);
    area.setWrapStyleWord(true);
    area.setToolTipText(Texts.of("note.tip"));
    area.getAccessibleContext().setAccessibleName(Texts.of("form.note"));
    area.addFocusListener(
        new FocusAdapter() {
          @Override
          public void focusLost(FocusEvent e) {
            if (!e.isTemporary()) {
              take();
            }
          }
        });
    area.addKeyListener(
        new KeyAdapter() {
          @Override
          public void keyPressed(KeyEvent e) {
            boolean done =
                e.getKeyCode() == KeyEvent.VK_ENTER
                    && (e.getModifiersEx() & InputEvent.CTRL_DOWN_MASK) != 0;
            if (done) {
              take();
            } else if (e.getKeyCode() == KeyEvent.VK_ESCAPE && !area.getText().equals(shown)) {
              area.setText(shown);
              e.consume();
            }
          }
        });
    leader.setName("note.leader");
    leader.setToolTipText(Texts.of("note.leader.tip"));
    leader.addActionListener(e -> runner.apply(MarkupCommands.withoutLeader(id)));
    form.across(new JScrollPane(area));
    form.across(leader);
    update();
  }

  private void take() {
    if (!area.getText().equals(shown)) {
      runner.apply(MarkupCommands.words(id, area.getText()));
    }
  }

  @Override
  public Object key() {
    return "note " + id;
  }

  @Override
  public JComponent view() {
    return form;
  }

  @Override
  public void update() {
    form.update();
    String text = runner.document().plan().markup().note(id).map(Note::text).orElse("");
    if (!text.equals(shown) || !area.hasFocus()) {
      shown = text;
      area.setText(text);
    }
    leader.setVisible(
        runner.document().plan().markup().note(id).flatMap(Note::pointsAt).isPresent());
  }
}
