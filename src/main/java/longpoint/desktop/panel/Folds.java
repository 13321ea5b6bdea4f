package longpoint.desktop.panel;

import java.util.HashSet;
import java.util.Set;

/** Which headings of the forms stand open: what was opened for one wall is open for the next. */
final class Folds {
  private final Set<String> open = new HashSet<>();

  boolean isOpen(String heading) {
    return open.contains(heading);
  }

  void opened(String heading) {
    open.add(heading);
  }

  void closed(String heading) {
    open.remove(heading);
  }
}
