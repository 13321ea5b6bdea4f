package longpoint.desktop.file;

import java.nio.file.Path;
import java.util.Optional;

/** What the window asks and tells. Tests answer in place of a person. */
public interface Dialogs {
  /** What to do with changes that are not saved. */
  enum Unsaved {
    SAVE,
    DISCARD,
    STAY
  }

  /** What to do with a draft that was left behind. */
  enum LeftDraft {
    OPEN,
    LATER,
    FORGET
  }

  /** Which plan to open; empty for none. */
  Optional<Path> planToOpen(Optional<Path> near);

  /**
   * Where to save a plan; empty for nowhere. Whether an existing file may be replaced has been
   * asked.
   */
  Optional<Path> planToSave(Path suggested);

  /** The folder for a packet; empty for none. */
  Optional<Path> packetFolder(Path suggested);

  /**
   * Asks before changes are left behind.
   *
   * @param title of the plan
   */
  Unsaved unsaved(String title);

  /**
   * What to do with a draft found after a crash.
   *
   * @param title of the plan, may be empty
   */
  LeftDraft leftDraft(String title);

  /** Says something that has to be read. */
  void tell(String title, String words);
}
