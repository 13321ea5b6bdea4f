package longpoint.desktop.action;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything the window can do, by chapter, in the order of the menus.
 *
 * @param chapters title key to its tasks
 */
public record Catalogue(Map<String, List<Task>> chapters) {
  /**
   * @throws IllegalArgumentException if two tasks share an id, a key or a letter
   */
  public Catalogue {
    Map<String, List<Task>> copy = new LinkedHashMap<>();
    chapters.forEach((chapter, tasks) -> copy.put(chapter, List.copyOf(tasks)));
    chapters = java.util.Collections.unmodifiableMap(copy);
    Map<Object, String> owner = new LinkedHashMap<>();
    for (Task task : flat(chapters)) {
      claim(owner, task.id(), task.id());
      task.key().ifPresent(k -> claim(owner, k, task.id()));
      task.second().ifPresent(k -> claim(owner, k, task.id()));
      task.letter().ifPresent(c -> claim(owner, c, task.id()));
    }
  }

  private static void claim(Map<Object, String> owner, Object what, String id) {
    String other = owner.putIfAbsent(what, id);
    if (other != null) {
      throw new IllegalArgumentException(what + " belongs to " + other + " and to " + id);
    }
  }

  public List<Task> all() {
    return flat(chapters);
  }

  /**
   * @throws IllegalArgumentException if there is no such task, which is a bug
   */
  public Task task(String id) {
    return all().stream()
        .filter(t -> t.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no task " + id));
  }

  /** The task on a letter of the sheet. */
  public Optional<Task> onLetter(char letter) {
    char low = Character.toLowerCase(letter);
    return all().stream().filter(t -> t.letter().filter(c -> c == low).isPresent()).findFirst();
  }

  /**
   * Tasks whose name or tip holds every typed word, accents or none: those named so before those
   * that only tell of it, and of each the ones that can be done now first.
   */
  public List<Task> matching(String typed) {
    return all().stream()
        .filter(t -> Keys.matches(t.name().get() + " " + t.tip().get(), typed))
        .sorted(Comparator.comparingInt(t -> rank(t, typed)))
        .toList();
  }

  private static int rank(Task task, String typed) {
    int named =
        Keys.begins(task.name().get(), typed) ? 0 : Keys.matches(task.name().get(), typed) ? 2 : 4;
    return named + (task.enabled().getAsBoolean() ? 0 : 1);
  }

  private static List<Task> flat(Map<String, List<Task>> chapters) {
    return chapters.values().stream().flatMap(List::stream).toList();
  }
}
