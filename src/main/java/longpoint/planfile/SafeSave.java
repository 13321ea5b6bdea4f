package longpoint.planfile;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Arrays;

/**
 * Puts a file in place whole or not at all. Whatever goes wrong, power included, either the old
 * file or the new one is there, complete; the old one stays beside it as {@code name~}.
 *
 * <p>Steps: write beside, flush to the disk, keep the old as backup, rename over, flush the folder.
 */
final class SafeSave {
  private static final int TRIES = 1000;

  private SafeSave() {}

  /** The same bytes again change nothing, so that saving twice does not push out the backup. */
  static void save(byte[] bytes, Path path) throws IOException {
    Path target = Files.isSymbolicLink(path) ? path.toRealPath() : path.toAbsolutePath();
    if (holds(target, bytes)) {
      return;
    }
    Path beside = writeBeside(target, bytes);
    try {
      if (Files.exists(target)) {
        keepPermissions(target, beside);
        keepBackup(target);
      }
      rename(beside, target);
    } catch (IOException | RuntimeException e) {
      giveUp(beside, e);
      throw e;
    }
    flushFolder(target.getParent());
  }

  /** As {@link #save}, without a backup. */
  static void replace(byte[] bytes, Path path) throws IOException {
    Path target = path.toAbsolutePath();
    Path beside = writeBeside(target, bytes);
    try {
      rename(beside, target);
    } catch (IOException | RuntimeException e) {
      giveUp(beside, e);
      throw e;
    }
    flushFolder(target.getParent());
  }

  static Path backupOf(Path path) {
    return path.resolveSibling(path.getFileName() + "~");
  }

  private static boolean holds(Path target, byte[] bytes) throws IOException {
    return Files.isRegularFile(target)
        && Files.size(target) == bytes.length
        && Arrays.equals(Files.readAllBytes(target), bytes);
  }

  private static Path writeBeside(Path target, byte[] bytes) throws IOException {
    for (int n = 0; n < TRIES; n++) {
      Path beside = target.resolveSibling("." + target.getFileName() + ".saving" + n);
      try (FileChannel file =
          FileChannel.open(beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
        try {
          ByteBuffer left = ByteBuffer.wrap(bytes);
          while (left.hasRemaining()) {
            file.write(left);
          }
          file.force(true);
        } catch (IOException e) {
          Files.deleteIfExists(beside);
          throw e;
        }
        return beside;
      } catch (FileAlreadyExistsException e) {
        // Another save is under way, or one was cut off: leave it alone and take the next name.
        continue;
      }
    }
    throw new FileAlreadyExistsException(target.toString());
  }

  private static void keepPermissions(Path from, Path to) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(from, PosixFileAttributeView.class);
    if (view != null) {
      Files.setPosixFilePermissions(to, view.readAttributes().permissions());
    }
  }

  private static void keepBackup(Path target) throws IOException {
    Path beside = writeBeside(backupOf(target), Files.readAllBytes(target));
    try {
      rename(beside, backupOf(target));
    } catch (IOException | RuntimeException e) {
      giveUp(beside, e);
      throw e;
    }
  }

  /** Only after a failure: once renamed, the name beside may already be another save's. */
  private static void giveUp(Path beside, Exception reason) {
    try {
      Files.deleteIfExists(beside);
    } catch (IOException left) {
      reason.addSuppressed(left);
    }
  }

  private static void rename(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** So that the rename itself outlives a power cut. Not every system lets a folder be flushed. */
  private static void flushFolder(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // The file's own bytes are on the disk; only its new name may lag.
      return;
    }
  }
}
