package longpoint.planfile;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PushbackInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.regex.Pattern;
import longpoint.plan.Plan;
import longpoint.wording.Phrase;

/**
 * Opens and saves plans. What cannot be made into a plan is refused with its place in the file;
 * keys this version does not know are kept. The same plan always gives the same bytes. A sheet that
 * was sent as SVG opens too, see {@link SheetPlan}.
 */
public final class PlanFile {
  /** Enough to see past a byte order mark and blank lines. */
  private static final int LOOK_AHEAD = 256;

  private static final Pattern DXF =
      Pattern.compile("\\s*(0\\s*[\\r\\n]\\s*SECTION|999\\s*[\\r\\n])");

  private PlanFile() {}

  /**
   * @throws PlanFileException if the file cannot be read or is not a plan; the message names the
   *     place in it
   */
  public static Opened read(Path path) throws PlanFileException {
    try (InputStream in = Files.newInputStream(path)) {
      return read(in);
    } catch (PlanFileException e) {
      throw e;
    } catch (NoSuchFileException e) {
      throw PlanFileException.whole(Phrase.of("planfile.noFile", path.toString()), e);
    } catch (AccessDeniedException e) {
      throw PlanFileException.whole(Phrase.of("planfile.mayNotRead", path.toString()), e);
    } catch (IOException e) {
      throw PlanFileException.whole(
          Phrase.of("planfile.notRead", path.toString(), FileTrouble.of(e)), e);
    }
  }

  /** Reads to the end of the stream and leaves it open. */
  public static Opened read(InputStream in) throws PlanFileException {
    try {
      PushbackInputStream all = new PushbackInputStream(in, LOOK_AHEAD);
      byte[] start = all.readNBytes(LOOK_AHEAD);
      all.unread(start);
      if (DXF.matcher(new String(start, StandardCharsets.ISO_8859_1)).lookingAt()) {
        throw PlanFileException.whole(Phrase.of("planfile.dxf"));
      }
      return isMarkup(start) ? SheetPlan.read(all) : PlanReader.read(JsonText.read(all));
    } catch (PlanFileException e) {
      throw e;
    } catch (IOException e) {
      throw PlanFileException.whole(Phrase.of("planfile.planNotRead", FileTrouble.of(e)), e);
    }
  }

  /** Whether the first sign is that of markup, in whatever encoding XML knows. */
  private static boolean isMarkup(byte[] start) {
    for (byte b : start) {
      boolean mark = b < 0 || b == 0;
      boolean blank = b == ' ' || b == '\t' || b == '\r' || b == '\n';
      if (!mark && !blank) {
        return b == '<';
      }
    }
    return false;
  }

  public static Opened read(byte[] bytes) throws PlanFileException {
    return read(new ByteArrayInputStream(bytes));
  }

  /**
   * Saves whole or not at all, keeping the file as it was before beside it as {@code name~}.
   *
   * @throws PlanFileException if it cannot be saved; the file is then as it was before
   */
  public static void write(Plan plan, Path path) throws PlanFileException {
    byte[] bytes = bytes(plan);
    try {
      SafeSave.save(bytes, path);
    } catch (IOException e) {
      throw PlanFileException.whole(
          new AsItIs(Phrase.of("planfile.notSaved", path.toString(), FileTrouble.of(e))), e);
    }
  }

  /** The file's content, UTF-8. */
  public static byte[] bytes(Plan plan) {
    return PlanWriter.write(plan).getBytes(StandardCharsets.UTF_8);
  }

  /** Where the file as it was before the last save is kept. */
  public static Path backupOf(Path path) {
    return SafeSave.backupOf(path);
  }
}
