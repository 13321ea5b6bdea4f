package longpoint.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import longpoint.plan.Plan;

/**
 * Named plans, one after another, and a place among them. Plans never change and share their parts,
 * so that a long history is cheap; undo and redo return the very plan that was there.
 */
final class History {
  /** A plan and what the user did to arrive at it. */
  private record Entry(String name, Plan plan) {}

  private final List<Entry> entries = new ArrayList<>();
  private int now;

  History(Plan first) {
    entries.add(new Entry("", first));
  }

  Plan plan() {
    return entries.get(now).plan();
  }

  /** Adds a plan after the present one; what was undone before is gone. */
  void add(String name, Plan plan) {
    entries.subList(now + 1, entries.size()).clear();
    entries.add(new Entry(name, plan));
    now++;
  }

  /** Puts a plan in the place of the present one; what was undone before is gone. */
  void replace(Plan plan) {
    String name = entries.get(now).name();
    entries.subList(now, entries.size()).clear();
    entries.add(new Entry(name, plan));
  }

  Optional<String> undoName() {
    return now > 0 ? Optional.of(entries.get(now).name()) : Optional.empty();
  }

  Optional<String> redoName() {
    return now + 1 < entries.size() ? Optional.of(entries.get(now + 1).name()) : Optional.empty();
  }

  void undo() {
    now = Math.max(0, now - 1);
  }

  void redo() {
    now = Math.min(entries.size() - 1, now + 1);
  }

  /** Names of what was done, oldest first, up to the present plan. */
  List<String> done() {
    return entries.subList(1, now + 1).stream().map(Entry::name).toList();
  }
}
