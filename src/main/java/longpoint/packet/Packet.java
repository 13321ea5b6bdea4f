package longpoint.packet;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Stream;
import longpoint.drawing.Page;
import longpoint.export.MailDraft;
import longpoint.export.ZipWriter;
import longpoint.pipeline.Design;
import longpoint.sheets.Paper;
import longpoint.sheets.SheetSet;
import longpoint.sheets.Solved;
import longpoint.stop.CalledOff;
import longpoint.units.LengthUnit;

/**
 * Writes what is handed over of a design to a folder: the sheets as SVG and together as PDF, a page
 * for phones, plan and frame in real size as DXF, the house in space, every list and figure for
 * people and for programs, and the plan itself; on request all of it as one archive, and a mail
 * ready to be addressed. Files of the same names are written over, others in the folder are left
 * alone. The same design gives the same bytes.
 */
public final class Packet {
  /** More threads than this only wait for the disk. */
  private static final int MOST_THREADS = 4;

  /**
   * A file that is there now.
   *
   * @param number in the order they are handed over, from 1
   * @param of how many there will be
   */
  public record Written(Path file, int number, int of) {}

  private Packet() {}

  /** Paper for people who draw in a unit: what most of their printers hold. */
  public static Paper paperFor(LengthUnit unit) {
    return switch (unit) {
      case INCH -> Paper.TABLOID;
      case MILLIMETRE -> Paper.A3;
    };
  }

  /**
   * Writes the files, making the folder if it is not there.
   *
   * @param name the files begin with, see {@link #baseName}
   * @param told each file once it is written, in the order they are handed over; what it throws
   *     ends the writing
   * @return the files in the order they are handed over, bundles last
   * @throws IOException if the folder or a file cannot be written
   */
  public static List<Path> write(
      Design design, Request request, Path folder, String name, Consumer<Written> told)
      throws IOException {
    List<PacketFile> files = PacketFiles.of(design, request, name);
    Files.createDirectories(folder);
    int all = files.size() + request.bundles().size();
    writeAll(files, folder, (file, n) -> told.accept(new Written(file, n, all)));
    Design spoken = request.language().map(design::spoken).orElse(design);
    List<PacketFile> bundles = bundles(spoken, request, name, files, folder);
    writeAll(bundles, folder, (file, n) -> told.accept(new Written(file, files.size() + n, all)));
    return Stream.concat(files.stream(), bundles.stream())
        .map(f -> folder.resolve(f.name()))
        .toList();
  }

  /** As {@link #write(Design, Request, Path, String, Consumer)}, for those who do not wait. */
  public static List<Path> write(Design design, Request request, Path folder, String name)
      throws IOException {
    return write(design, request, folder, name, file -> {});
  }

  /** As {@link #write(Design, Request, Path, String)}: everything, named after the plan. */
  public static List<Path> write(Design design, Path folder) throws IOException {
    return write(design, Request.everything(design.plan().unit()), folder, file -> {});
  }

  /** As {@link #write(Design, Request, Path, String, Consumer)}, named after the plan. */
  public static List<Path> write(
      Design design, Request request, Path folder, Consumer<Written> told) throws IOException {
    return write(design, request, folder, baseName(design.plan().title()), told);
  }

  private static List<PacketFile> bundles(
      Design design, Request request, String name, List<PacketFile> files, Path folder) {
    List<PacketFile> bundles = new ArrayList<>();
    if (request.bundles().contains(Request.Bundle.ZIP)) {
      List<ZipWriter.Member> members =
          files.stream()
              .map(f -> new ZipWriter.Member(f.name(), written(folder.resolve(f.name()))))
              .toList();
      bundles.add(new PacketFile(name + ".zip", Output.PLAN, out -> ZipWriter.write(members, out)));
    }
    if (request.bundles().contains(Request.Bundle.MAIL)) {
      List<PacketFile> taken =
          files.stream().filter(f -> request.mailed().contains(f.output())).toList();
      List<MailDraft.Attachment> attachments =
          taken.stream()
              .map(
                  f ->
                      new MailDraft.Attachment(
                          f.name(), f.output().type(), written(folder.resolve(f.name()))))
              .toList();
      MailDraft mail =
          new MailDraft(MailText.subject(design), MailText.of(design, taken), attachments);
      bundles.add(new PacketFile(name + ".eml", Output.PLAN, mail::write));
    }
    return bundles;
  }

  private static ZipWriter.Content written(Path file) {
    return out -> Files.copy(file, out);
  }

  /** Files are independent of each other: they are written side by side. */
  private static void writeAll(List<PacketFile> files, Path folder, BiConsumer<Path, Integer> told)
      throws IOException {
    int threads = Math.min(MOST_THREADS, Runtime.getRuntime().availableProcessors());
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<Path>> writing = new ArrayList<>();
      files.forEach(f -> writing.add(pool.submit(() -> write(f, folder))));
      for (int i = 0; i < writing.size(); i++) {
        told.accept(writing.get(i).get(), i + 1);
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException("called off while writing to " + folder);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof IOException io) {
        throw io;
      }
      if (e.getCause() instanceof CancellationException off) {
        throw off;
      }
      throw new IllegalStateException("a file could not be made", e.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  private static Path write(PacketFile file, Path folder) throws IOException {
    CalledOff.check();
    Path path = folder.resolve(file.name());
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(path))) {
      file.content().writeTo(out);
    }
    return path;
  }

  /**
   * What the files of a plan begin with: its own file name without the ending. A name that no file
   * system would mind is made of a title that way too.
   */
  public static String baseName(String fileNameOrTitle) {
    String bare = fileNameOrTitle.replaceFirst("(?i)\\.(json|svg)$", "");
    String safe =
        bare.strip().replaceAll("[^\\p{L}\\p{N}._-]+", "-").replaceAll("^[.-]+|[.-]+$", "");
    return safe.isEmpty() ? "plan" : safe;
  }

  /** Every sheet of a packet, in order, as it is printed and exported. */
  public static List<Page> pages(Design design, Paper paper) {
    return sheets(design, paper).pages();
  }

  static SheetSet sheets(Design design, Paper paper) {
    return SheetSet.of(solved(design), paper);
  }

  /** A design as the sheets take it. */
  static Solved solved(Design design) {
    return new Solved(
        design.plan(),
        design.surface(),
        design.framing(),
        design.deck(),
        design.chalk(),
        design.takeOff(),
        design.lumber(),
        design.onSite(),
        design.aids(),
        design.problems());
  }
}
