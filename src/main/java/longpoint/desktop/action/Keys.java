package longpoint.desktop.action;

import java.awt.Toolkit;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.text.Normalizer;
import java.util.Locale;
import javax.swing.KeyStroke;

/** Keys as the catalogue writes them and as people read them. */
final class Keys {
  private Keys() {}

  /**
   * @param key as {@link KeyStroke#getKeyStroke(String)} reads it; {@code menu} stands for Control,
   *     or for Command on a Mac
   */
  static KeyStroke stroke(String key) {
    String menu =
        Toolkit.getDefaultToolkit().getMenuShortcutKeyMaskEx() == InputEvent.META_DOWN_MASK
            ? "meta"
            : "ctrl";
    KeyStroke stroke = KeyStroke.getKeyStroke(key.replace("menu", menu));
    if (stroke == null) {
      throw new IllegalArgumentException("not a key: " + key);
    }
    return stroke;
  }

  /** For example {@code Ctrl+Shift+S}. */
  static String text(KeyStroke stroke) {
    String held = InputEvent.getModifiersExText(stroke.getModifiers());
    String key =
        switch (stroke.getKeyCode()) {
          case KeyEvent.VK_PLUS, KeyEvent.VK_EQUALS -> "+";
          case KeyEvent.VK_MINUS -> "\u2212";
          case KeyEvent.VK_COMMA -> ",";
          default -> KeyEvent.getKeyText(stroke.getKeyCode());
        };
    return held.isEmpty() ? key : held + "+" + key;
  }

  static boolean matches(String name, String typed) {
    String low = bare(name);
    for (String word : bare(typed).strip().split("\\s+")) {
      if (!low.contains(word)) {
        return false;
      }
    }
    return true;
  }

  static boolean begins(String name, String typed) {
    return bare(name).startsWith(bare(typed).strip());
  }

  /** Small letters without their accents, which few people type when they search. */
  private static String bare(String words) {
    return Normalizer.normalize(words, Normalizer.Form.NFD)
        .replaceAll("\\p{M}", "")
        .toLowerCase(Locale.ROOT);
  }
}
