package longpoint.desktop;

import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.prefs.BackingStoreException;
import java.util.prefs.Preferences;
import java.util.stream.Collectors;
import longpoint.desktop.solid.SolidLayer;
import longpoint.desktop.view.Showing;
import longpoint.packet.Packet;
import longpoint.sheets.Paper;
import longpoint.units.LengthUnit;

/**
 * What the window remembers from one day to the next, kept where the platform keeps such things. A
 * place that cannot be written loses the memory, never the work: nothing here throws, and nothing
 * waits for the disk but {@link #close}.
 */
public final class Settings {
  private static final int RECENT = 8;

  /** Held here, since a logger nobody holds forgets its level. */
  private static final Logger PREFERENCES_LOG = Logger.getLogger("java.util.prefs");

  private static final int LONGEST_SECONDS = 3;

  private final Preferences kept;
  private final Map<String, Optional<String>> known = new ConcurrentHashMap<>();
  private final AtomicInteger waiting = new AtomicInteger();
  private final ExecutorService writer =
      Executors.newSingleThreadExecutor(
          r -> {
            Thread t = new Thread(r, "settings");
            t.setDaemon(true);
            return t;
          });

  Settings(Preferences kept) {
    this.kept = kept;
  }

  public static Settings ofUser() {
    PREFERENCES_LOG.setLevel(Level.OFF); // see the class comment; nobody needs to be told
    return new Settings(Preferences.userRoot().node("longpoint"));
  }

  public Theme theme() {
    return "dark".equals(get("theme", "light")) ? Theme.DARK : Theme.LIGHT;
  }

  public void setTheme(Theme theme) {
    put("theme", theme == Theme.DARK ? "dark" : "light");
  }

  /** Whether the window takes the look of the desktop. */
  public boolean following() {
    return "yes".equals(get("followDesktop", "yes"));
  }

  public void setFollowing(boolean following) {
    put("followDesktop", following ? "yes" : "no");
  }

  /** Whether the window filled the screen last. */
  public boolean maximised() {
    return "yes".equals(get("maximised", "no"));
  }

  public void setMaximised(boolean maximised) {
    put("maximised", maximised ? "yes" : "no");
  }

  /** Size of the window's lettering in points, 12 to 24. */
  public int textSize() {
    try {
      return Math.max(12, Math.min(24, Integer.parseInt(get("textSize", "15"))));
    } catch (NumberFormatException e) {
      return 15;
    }
  }

  public void setTextSize(int points) {
    put("textSize", Integer.toString(points));
  }

  /** Names of what is not to hold the pointer. */
  public Set<String> holdsOff() {
    return Set.copyOf(List.of(get("holdsOff", "").split(",")));
  }

  public void setHoldsOff(Set<String> names) {
    put("holdsOff", names.stream().sorted().collect(Collectors.joining(",")));
  }

  /** The step that lengths and places go in, in a unit; empty for the usual one. */
  public Optional<Double> grid(LengthUnit unit) {
    try {
      double grid = Double.parseDouble(get("grid." + unit.name(), ""));
      return grid >= 0 && Double.isFinite(grid) ? Optional.of(grid) : Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  public void setGrid(LengthUnit unit, double grid) {
    put("grid." + unit.name(), Double.toString(grid));
  }

  /** Where the window stood last. */
  public Optional<Rectangle> window() {
    String[] sides = get("window", "").split(",");
    try {
      return sides.length == 4
          ? Optional.of(
              new Rectangle(
                  Integer.parseInt(sides[0]),
                  Integer.parseInt(sides[1]),
                  Integer.parseInt(sides[2]),
                  Integer.parseInt(sides[3])))
          : Optional.empty();
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  public void setWindow(Rectangle at) {
    put("window", at.x + "," + at.y + "," + at.width + "," + at.height);
  }

  /** Whether a view stands beside the sheet. */
  public boolean besideShown() {
    return "yes".equals(get("solid", "no"));
  }

  public void setBesideShown(boolean shown) {
    put("solid", shown ? "yes" : "no");
  }

  /** Whether views stand below the sheet rather than beside it. */
  public boolean besideBelow() {
    return "yes".equals(get("besideBelow", "no"));
  }

  public void setBesideBelow(boolean below) {
    put("besideBelow", below ? "yes" : "no");
  }

  /** The view that stood beside the sheet last. */
  public Showing beside() {
    String kept = get("beside", "");
    return Arrays.stream(Showing.values())
        .filter(s -> s.key().equals(kept))
        .findFirst()
        .orElse(Showing.HOUSE);
  }

  public void setBeside(Showing view) {
    put("beside", view.key());
  }

  /** What of the house is shown. */
  public Set<SolidLayer> solidLayers() {
    String kept = get("solidLayers", "?");
    return kept.equals("?")
        ? SolidLayer.AT_FIRST
        : Arrays.stream(SolidLayer.values())
            .filter(layer -> List.of(kept.split(" ")).contains(layer.name()))
            .collect(Collectors.toSet());
  }

  public void setSolidLayers(Set<SolidLayer> layers) {
    put(
        "solidLayers",
        layers.stream().sorted().map(SolidLayer::name).collect(Collectors.joining(" ")));
  }

  /** Paper that sheets are laid out for: what was chosen last for plans of this unit. */
  public Paper paper(LengthUnit unit) {
    String kept = get("paper." + unit, "");
    return Arrays.stream(Paper.values())
        .filter(p -> p.name().equals(kept))
        .findFirst()
        .orElse(Packet.paperFor(unit));
  }

  public void setPaper(LengthUnit unit, Paper paper) {
    put("paper." + unit, paper.name());
  }

  /** Share of the room that the sheet keeps beside a view, if it has been set. */
  public Optional<Double> sheetShare() {
    try {
      return Optional.of(get("sheetShare", ""))
          .filter(s -> !s.isEmpty())
          .map(Double::parseDouble)
          .filter(share -> share > 0.1 && share < 0.9);
    } catch (NumberFormatException e) {
      return Optional.empty();
    }
  }

  public void setSheetShare(double share) {
    put("sheetShare", Double.toString(share));
  }

  /** Plans opened or saved lately, latest first. */
  public List<Path> recent() {
    List<Path> paths = new ArrayList<>();
    for (int i = 0; i < RECENT; i++) {
      String path = get("recent" + i, "");
      if (!path.isEmpty()) {
        paths.add(Path.of(path));
      }
    }
    return paths;
  }

  public void addRecent(Path plan) {
    List<Path> paths = new ArrayList<>(recent());
    Path whole = plan.toAbsolutePath().normalize();
    paths.remove(whole);
    paths.add(0, whole);
    for (int i = 0; i < RECENT; i++) {
      put("recent" + i, i < paths.size() ? paths.get(i).toString() : "");
    }
  }

  private String get(String key, String otherwise) {
    return known.computeIfAbsent(key, k -> Optional.ofNullable(read(k))).orElse(otherwise);
  }

  private String read(String key) {
    try {
      return kept.get(key, null);
    } catch (IllegalStateException e) {
      return null;
    }
  }

  /** What is asked for next is known at once; the disk may take its time. */
  private void put(String key, String value) {
    known.put(key, Optional.of(value));
    if (!writer.isShutdown()) {
      waiting.incrementAndGet();
      writer.execute(() -> write(key, value));
    }
  }

  private void write(String key, String value) {
    try {
      kept.put(key, value);
      if (waiting.decrementAndGet() == 0) {
        kept.flush();
      }
    } catch (BackingStoreException | IllegalStateException | IllegalArgumentException e) {
      // Not remembered; see the class comment.
    }
  }

  /** Waits until all is kept, but not for ever; what is set afterwards is not. */
  void close() {
    writer.shutdown();
    try {
      if (!writer.awaitTermination(LONGEST_SECONDS, TimeUnit.SECONDS)) {
        writer.shutdownNow();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
