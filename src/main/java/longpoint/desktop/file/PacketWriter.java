package longpoint.desktop.file;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import longpoint.packet.Packet;
import longpoint.packet.Request;
import longpoint.pipeline.Design;

/** Writes drawings and lists of a design to a folder. */
@FunctionalInterface
public interface PacketWriter {
  /**
   * Runs off the event thread.
   *
   * @param written told each file once it is there; what it throws stops the writing
   * @return what was written, in order
   * @throws IOException with words for the user
   */
  List<Path> write(Design design, Request request, Path folder, Consumer<Packet.Written> written)
      throws IOException;
}
