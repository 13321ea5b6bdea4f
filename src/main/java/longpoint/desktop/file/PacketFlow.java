package longpoint.desktop.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import longpoint.desktop.Errand;
import longpoint.desktop.Errands;
import longpoint.desktop.Job;
import longpoint.desktop.Settings;
import longpoint.desktop.Texts;
import longpoint.desktop.Trouble;
import longpoint.packet.Request;
import longpoint.pipeline.Design;
import longpoint.pipeline.Pipeline;
import longpoint.plan.Plan;
import longpoint.surface.RoofMemory;

/**
 * The path of a packet to the disk. It is written to a folder of its own first and moved into place
 * when it is whole, so that one that was called off leaves nothing, and one that fails leaves the
 * last one as it was.
 */
public final class PacketFlow {
  private final Job job;
  private final Settings settings;
  private final Dialogs dialogs;
  private final PacketWriter packets;
  private final Errands errands;

  /** What the last packet of this window held is offered again. */
  private Optional<Request> last = Optional.empty();

  public PacketFlow(
      Job job, Settings settings, Dialogs dialogs, PacketWriter packets, Errands errands) {
    this.job = job;
    this.settings = settings;
    this.dialogs = dialogs;
    this.packets = packets;
    this.errands = errands;
  }

  /**
   * Asks what shall be written and where, and writes it.
   *
   * @param planFile where the plan is kept, or would be
   */
  public void packet(Path planFile) {
    Path beside = planFile.toAbsolutePath();
    String name = beside.getFileName().toString().replaceAll("\\.json$", "");
    Plan plan = job.document().plan();
    Request offered =
        last.orElseGet(() -> Request.everything(plan.unit()))
            .withPaper(settings.paper(plan.unit()));
    dialogs
        .packet(
            new PacketChoice(beside.resolveSibling(name + "-" + Texts.of("file.packet")), offered))
        .ifPresent(this::write);
  }

  private void write(PacketChoice choice) {
    last = Optional.of(choice.request());
    Path folder = choice.folder();
    Plan plan = job.document().plan();
    settings.setPaper(plan.unit(), choice.request().paper());
    errands.run(
        Texts.of("state.packet"),
        watch -> write(plan, choice, watch),
        files ->
            dialogs.tell(
                Texts.of("tell.packet"), Texts.of("tell.packet.words", files.size(), folder)),
        broken -> dialogs.tell(Texts.of("tell.noPacket"), Trouble.words(broken)));
  }

  private List<Path> write(Plan plan, PacketChoice choice, Errand.Watch watch) throws IOException {
    Path folder = choice.folder();
    Files.createDirectories(folder);
    Path apart = Files.createTempDirectory(folder, ".unfinished-");
    try {
      Design design = Pipeline.solve(plan, new RoofMemory(), watch::stage);
      Plan spoken = plan.spokenElse(Texts.language());
      watch.step(Texts.of("state.sheets"));
      List<Path> made =
          packets.write(
              design,
              choice.request().withLanguage(Optional.of(spoken.language())),
              apart,
              w ->
                  watch.step(
                      Texts.of("state.written", w.file().getFileName().toString()),
                      w.number(),
                      w.of()));
      List<Path> moved = new ArrayList<>();
      for (Path file : made) {
        Path place = folder.resolve(apart.relativize(file));
        Files.createDirectories(place.getParent());
        moved.add(Files.move(file, place, StandardCopyOption.REPLACE_EXISTING));
      }
      return moved;
    } finally {
      remove(apart);
    }
  }

  private static void remove(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }
}
