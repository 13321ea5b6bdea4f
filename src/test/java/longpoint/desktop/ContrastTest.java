package longpoint.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.List;
import javax.swing.UIManager;
import longpoint.desktop.canvas.CanvasColours;
import longpoint.drawing.Ink;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Contrast as the Web Content Accessibility Guidelines 2.1 reckon it (W3C, from memory): at least
 * 4.5 to 1 for words (1.4.3), 3 to 1 for lines that carry meaning (1.4.11).
 */
class ContrastTest {
  private static final double WORDS = 4.5;
  private static final double LINES = 3;

  @AfterEach
  void light() {
    WindowDriver.onEvents(
        () -> {
          Theme.LIGHT.install(15);
          return null;
        });
  }

  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }

  private static double luminance(Color c) {
    return 0.2126 * linear(c.getRed())
        + 0.7152 * linear(c.getGreen())
        + 0.0722 * linear(c.getBlue());
  }

  private static double contrast(Color a, Color b) {
    double one = luminance(a) + 0.05;
    double other = luminance(b) + 0.05;
    return Math.max(one, other) / Math.min(one, other);
  }

  private static void assertReadable(String what, Color words, Color ground, double least) {
    assertThat(contrast(words, ground)).as(what).isGreaterThanOrEqualTo(least);
  }

  @ParameterizedTest
  @EnumSource(Theme.class)
  void wordsOfTheWindowCanBeRead(Theme theme) {
    WindowDriver.needDisplay();
    WindowDriver.onEvents(
        () -> {
          theme.install(15);
          for (String ground :
              List.of(
                  "Panel.background",
                  "Longpoint.card",
                  "TextField.background",
                  "Longpoint.hover")) {
            for (String words :
                List.of(
                    "Label.foreground",
                    "Longpoint.quiet",
                    "Longpoint.error",
                    "Longpoint.warning")) {
              Color on = UIManager.getColor(ground);
              assertReadable(
                  theme + " " + words + " on " + ground, UIManager.getColor(words), on, WORDS);
            }
          }
          Color chosen = UIManager.getColor("Longpoint.chosen");
          for (String words : List.of("Label.foreground", "Longpoint.quiet")) {
            assertReadable(
                theme + " " + words + " chosen", UIManager.getColor(words), chosen, WORDS);
          }
          assertReadable(
              theme + " selection",
              UIManager.getColor("List.selectionForeground"),
              UIManager.getColor("List.selectionBackground"),
              WORDS);
          assertReadable(
              theme + " tool tip",
              UIManager.getColor("ToolTip.foreground"),
              UIManager.getColor("ToolTip.background"),
              WORDS);
          return null;
        });
  }

  @ParameterizedTest
  @EnumSource(Theme.class)
  void wordsAndLinesOfTheSheetCanBeRead(Theme theme) {
    CanvasColours colours = theme.canvas();
    for (Color ground : List.of(colours.ground(), colours.of(Ink.TINT))) {
      for (Ink words : List.of(Ink.MAIN, Ink.QUIET, Ink.MEASURE)) {
        assertReadable(theme + " " + words, colours.of(words), ground, WORDS);
      }
      for (Ink line : List.of(Ink.RIDGE, Ink.VALLEY, Ink.EDGE, Ink.HIDDEN, Ink.ALERT)) {
        assertReadable(theme + " " + line, colours.of(line), ground, LINES);
      }
    }
    assertReadable(theme + " bubble", colours.bubbleText(), colours.bubble(), WORDS);
    assertReadable(theme + " rulers", colours.rulerText(), colours.ruler(), WORDS);
    assertReadable(theme + " snap", colours.snap(), colours.ground(), WORDS);
  }
}
