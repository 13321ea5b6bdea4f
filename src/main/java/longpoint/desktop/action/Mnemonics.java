package longpoint.desktop.action;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.swing.JMenuItem;

/**
 * Gives every item of a menu a letter of its own name to be chosen by, in whatever language the
 * names are: the first letter of a word where it is free, else any letter; who came first gives way
 * where it has another (augmenting paths; Kuhn 1955). One that finds none goes without.
 */
final class Mnemonics {
  private static final int NONE = 0;

  private final Map<Character, JMenuItem> owners = new HashMap<>();

  private Mnemonics() {}

  /** Letters for all these, each once, in their order. */
  static void give(List<? extends JMenuItem> items) {
    Mnemonics letters = new Mnemonics();
    for (JMenuItem item : items) {
      item.setMnemonic(NONE);
      letters.find(item, new HashSet<>());
    }
    letters.owners.forEach((letter, item) -> item.setMnemonic(letter));
  }

  private boolean find(JMenuItem item, Set<Character> tried) {
    List<Character> wanted = letters(item.getText());
    Optional<Character> free =
        wanted.stream().filter(c -> !owners.containsKey(c) && !tried.contains(c)).findFirst();
    if (free.isPresent()) {
      owners.put(free.get(), item);
      return true;
    }
    for (char letter : wanted) {
      if (tried.add(letter) && find(owners.get(letter), tried)) {
        owners.put(letter, item);
        return true;
      }
    }
    return false;
  }

  private static List<Character> letters(String name) {
    Stream<Character> heads =
        Stream.of(name.split("[^\\p{L}\\p{N}]+")).filter(w -> !w.isEmpty()).map(w -> w.charAt(0));
    Stream<Character> all = name.chars().mapToObj(c -> (char) c);
    return Stream.concat(heads, all)
        .filter(Mnemonics::typed)
        .map(Character::toUpperCase)
        .distinct()
        .toList();
  }

  /** A letter with an accent has no key of its own on most keyboards. */
  private static boolean typed(char letter) {
    return letter >= 'a' && letter <= 'z' || letter >= 'A' && letter <= 'Z';
  }
}
