package longpoint.planfile;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import longpoint.plan.Extras;
import longpoint.plan.Plan;
import longpoint.wording.Phrase;

/**
 * Keeps drafts of plans that are not yet saved, in a folder of the program's own, and finds those
 * that a crash or a power cut left behind.
 *
 * <p>A draft is a plan file with one key more, the file it belongs to. Beside it lies a lock that
 * the system lets go when the program ends in whatever way: a draft nobody holds was left behind.
 * Drafts are written as safely as plans are. A draft that cannot be read is never deleted here.
 */
public final class Recovery {
  private static final String FILE_KEY = "draftOf";
  private static final int MOST_DRAFTS = 1000;

  /** Locks this program holds. */
  private static final Set<Path> HELD_HERE = ConcurrentHashMap.newKeySet();

  private final Path folder;

  /**
   * @param folder made when it is first needed
   */
  public Recovery(Path folder) {
    this.folder = folder;
  }

  /**
   * A draft that was left behind.
   *
   * @param file the plan belongs to; empty if it was never saved
   * @param kept when it was last written
   */
  public record Left(Plan plan, Optional<Path> file, FileTime kept, Path draft) {}

  /** A fresh draft for a document; close it when the document is closed. */
  public Draft draft() throws PlanFileException {
    try {
      Files.createDirectories(folder);
      for (int n = 1; n <= MOST_DRAFTS; n++) {
        Path draft = folder.resolve("draft-" + n + ".json");
        Optional<FileChannel> held = Files.exists(draft) ? Optional.empty() : hold(lockOf(draft));
        if (held.isPresent()) {
          return new Draft(draft, held.get());
        }
      }
      throw new FileAlreadyExistsException(folder.toString());
    } catch (IOException e) {
      throw PlanFileException.whole(
          Phrase.of("planfile.draft.nowhere", folder.toString(), FileTrouble.of(e)), e);
    }
  }

  /** Drafts nobody holds, in the order of their names. */
  public List<Left> left() throws PlanFileException {
    List<Left> left = new ArrayList<>();
    try (DirectoryStream<Path> drafts = Files.newDirectoryStream(folder, "draft-*.json")) {
      for (Path draft : drafts) {
        read(draft).ifPresent(left::add);
      }
    } catch (NoSuchFileException e) {
      return List.of();
    } catch (IOException e) {
      throw PlanFileException.whole(
          Phrase.of("planfile.draft.notListed", folder.toString(), FileTrouble.of(e)), e);
    }
    left.sort((a, b) -> a.draft().compareTo(b.draft()));
    return List.copyOf(left);
  }

  /** Deletes a draft that has been opened again or is not wanted. */
  public void forget(Left left) throws PlanFileException {
    try {
      Files.deleteIfExists(left.draft());
    } catch (IOException e) {
      throw PlanFileException.whole(Phrase.of("planfile.draft.notDeleted", FileTrouble.of(e)), e);
    }
  }

  private static Optional<Left> read(Path draft) throws IOException {
    Optional<FileChannel> held = hold(lockOf(draft));
    if (held.isEmpty()) {
      return Optional.empty();
    }
    try {
      Plan plan = PlanFile.read(draft).plan();
      Map<String, String> extras = new LinkedHashMap<>(plan.extras().json());
      Optional<Path> file = Optional.ofNullable(extras.remove(FILE_KEY)).flatMap(Recovery::path);
      Plan clean = plan.withExtras(extras.isEmpty() ? Extras.NONE : new Extras(extras));
      return Optional.of(new Left(clean, file, Files.getLastModifiedTime(draft), draft));
    } catch (PlanFileException e) {
      return Optional.empty();
    } finally {
      release(lockOf(draft), held.get());
    }
  }

  /** A file's name as it stands in a draft; empty if this system cannot have such a file. */
  private static Optional<Path> path(String json) {
    try {
      return JsonText.string(json).map(Path::of);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private static Path lockOf(Path draft) {
    return draft.resolveSibling(draft.getFileName().toString().replace(".json", ".lock"));
  }

  /** The lock's channel if nobody else holds it. Lock files stay: deleting one opens a race. */
  private static Optional<FileChannel> hold(Path lock) throws IOException {
    // Asked first because on some systems opening and closing a file anew lets go of its lock.
    if (!HELD_HERE.add(lock.toAbsolutePath())) {
      return Optional.empty();
    }
    FileChannel channel =
        FileChannel.open(lock, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    try {
      if (channel.tryLock() != null) {
        return Optional.of(channel);
      }
    } catch (OverlappingFileLockException e) {
      // Held by another class loader of this very program: as good as another program.
    } catch (IOException e) {
      release(lock, channel);
      throw e;
    }
    release(lock, channel);
    return Optional.empty();
  }

  private static void release(Path lock, FileChannel channel) throws IOException {
    HELD_HERE.remove(lock.toAbsolutePath());
    channel.close();
  }

  /** The draft of one open document. */
  public static final class Draft implements AutoCloseable {
    private final Path draft;
    private final FileChannel held;

    private Draft(Path draft, FileChannel held) {
      this.draft = draft;
      this.held = held;
    }

    /**
     * Keeps the plan as it is now.
     *
     * @param file it belongs to; empty if it was never saved
     */
    public synchronized void keep(Plan plan, Optional<Path> file) throws PlanFileException {
      if (!held.isOpen()) {
        return;
      }
      Map<String, String> extras = new LinkedHashMap<>(plan.extras().json());
      extras.remove(FILE_KEY);
      file.ifPresent(f -> extras.put(FILE_KEY, JsonText.quote(f.toAbsolutePath().toString())));
      try {
        SafeSave.replace(PlanFile.bytes(plan.withExtras(new Extras(extras))), draft);
      } catch (IOException e) {
        throw PlanFileException.whole(Phrase.of("planfile.draft.notKept", FileTrouble.of(e)), e);
      }
    }

    /** Nothing is unsaved any more: deletes what was kept and goes on. */
    public synchronized void clear() throws PlanFileException {
      try {
        Files.deleteIfExists(draft);
      } catch (IOException e) {
        throw PlanFileException.whole(Phrase.of("planfile.draft.notDeleted", FileTrouble.of(e)), e);
      }
    }

    /** The document was closed on purpose: deletes what was kept. Nothing is kept afterwards. */
    @Override
    public synchronized void close() throws PlanFileException {
      if (!held.isOpen()) {
        return;
      }
      try {
        clear();
      } finally {
        try {
          release(lockOf(draft), held);
        } catch (IOException e) {
          throw PlanFileException.whole(
              Phrase.of("planfile.draft.notClosed", FileTrouble.of(e)), e);
        }
      }
    }
  }
}
