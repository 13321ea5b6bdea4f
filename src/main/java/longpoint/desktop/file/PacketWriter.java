package longpoint.desktop.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import longpoint.pipeline.Design;

/** Writes every drawing and list of a design to a folder. */
@FunctionalInterface
public interface PacketWriter {
  /**
   * Runs off the event thread.
   *
   * @return what was written, in order
   * @throws IOException with words for the user
   */
  List<Path> write(Design design, Path folder) throws IOException;
}
