package longpoint.planfile;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import longpoint.wording.Phrase;

/**
 * Why a file could not be read or written, in words: what the system throws is often only a path.
 */
public final class FileTrouble {
  private FileTrouble() {}

  /** The end of a sentence, without a point. */
  public static Phrase of(IOException trouble) {
    if (trouble instanceof AccessDeniedException) {
      return Phrase.of("planfile.io.denied");
    }
    if (trouble instanceof NoSuchFileException || trouble instanceof NotDirectoryException) {
      return Phrase.of("planfile.io.noFolder");
    }
    if (trouble instanceof FileAlreadyExistsException
        || trouble instanceof DirectoryNotEmptyException) {
      return Phrase.of("planfile.io.inTheWay");
    }
    String reason =
        trouble instanceof FileSystemException system
            ? system.getReason()
            : trouble.getLocalizedMessage();
    return reason == null || reason.isBlank()
        ? Phrase.of("planfile.io.unknown")
        : Phrase.of("planfile.io.system", reason);
  }
}
