package longpoint.desktop.panel;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPopupMenu;
import javax.swing.SwingUtilities;
import javax.swing.UIManager;
import longpoint.desktop.Texts;
import longpoint.editor.Command;
import longpoint.editor.Cure;
import longpoint.plan.Problem;
import net.miginfocom.swing.MigLayout;

/** What is wrong at a place, and a button for every cure that can be carried out. */
public final class CurePopup {
  private static final int WIDTH = 340;
  private static final int SIGN = 18;

  private CurePopup() {}

  /**
   * Opens it beside a place.
   *
   * @param apply carries a cure out
   */
  public static JPopupMenu open(
      Component over,
      java.awt.Point at,
      List<Problem> problems,
      List<Cure> cures,
      Consumer<Command> apply) {
    JPopupMenu popup = new JPopupMenu();
    popup.setName("cures");
    popup.setLayout(new MigLayout("insets 12 14 12 14, gap 8 4, wrap 2", "[][grow,fill]"));
    for (Problem problem : problems) {
      Words sign = new Words(Words.Rank.PLAIN, "");
      sign.setIcon(LineIcon.of("problem." + problem.level(), SIGN));
      sign.setForeground(UIManager.getColor(colour(problem)));
      popup.add(sign, "aligny top");
      popup.add(Words.wrapped(Words.Rank.PLAIN, problem.message(Texts.language()), WIDTH));
      String cure = problem.cure(Texts.language());
      if (!cure.isEmpty()) {
        popup.add(Words.wrapped(Words.Rank.QUIET, cure, WIDTH), "skip");
      }
    }
    List<JButton> buttons = new ArrayList<>();
    for (int i = 0; i < cures.size(); i++) {
      Cure cure = cures.get(i);
      JButton button = new JButton(cure.label());
      button.setName("cure." + i);
      button.setToolTipText(Texts.of("cure.tip"));
      button.addActionListener(
          e -> {
            popup.setVisible(false);
            apply.accept(cure.command());
          });
      buttons.add(button);
      popup.add(button, i == 0 ? "skip, gaptop 6" : "skip");
    }
    popup.show(over, at.x + SIGN, at.y + SIGN / 2);
    buttons.stream()
        .findFirst()
        .ifPresent(b -> SwingUtilities.invokeLater(b::requestFocusInWindow));
    return popup;
  }

  private static String colour(Problem problem) {
    return switch (problem.level()) {
      case ERROR -> "Longpoint.error";
      case WARNING -> "Longpoint.warning";
      case NOTE -> "Longpoint.quiet";
    };
  }
}
