package longpoint.export;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Writes files into one ZIP archive, in the order given: the same files give the same bytes. */
public final class ZipWriter {
  /**
   * A month past the earliest time an archive can hold: that one Java writes with the time zone.
   */
  private static final LocalDateTime TIME = LocalDateTime.of(1980, 2, 1, 0, 0);

  /** Writes what a file holds. */
  @FunctionalInterface
  public interface Content {
    /** The stream is left open. */
    void writeTo(OutputStream out) throws IOException;
  }

  /**
   * A file of the archive.
   *
   * @param name may hold folders, with slashes
   */
  public record Member(String name, Content content) {}

  private ZipWriter() {}

  /**
   * Writes the members one after the other. The stream is flushed, not closed.
   *
   * @throws IOException if the stream cannot be written
   */
  public static void write(List<Member> members, OutputStream out) throws IOException {
    ZipOutputStream zip = new ZipOutputStream(out);
    for (Member member : members) {
      ZipEntry entry = new ZipEntry(member.name());
      entry.setTimeLocal(TIME);
      zip.putNextEntry(entry);
      member.content().writeTo(zip);
      zip.closeEntry();
    }
    zip.finish();
    out.flush();
  }
}
