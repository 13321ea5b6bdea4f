package longpoint.desktop.canvas;

import java.awt.Color;
import java.util.EnumMap;
import java.util.Map;
import longpoint.drawing.Ink;

/**
 * Every colour of the sheet. On the light sheet the inks are those of the paper; on the dark sheet
 * each keeps its meaning and its distance from the others, lifted until it reads at arm's length.
 * Both stay apart for colour-blind readers (Okabe and Ito 2008), and no meaning hangs on colour
 * alone: kinds of lines differ in width and dash as well.
 */
public record CanvasColours(
    Color ground,
    Color gridFine,
    Color gridStrong,
    Color ruler,
    Color rulerText,
    Color selection,
    Color hover,
    Color snap,
    Color bubble,
    Color bubbleText,
    Color solidRoof,
    Color solidWall,
    Color solidFrame,
    Color solidShadow,
    Map<Ink, Color> inks) {
  public CanvasColours {
    inks = new EnumMap<>(inks);
  }

  public static CanvasColours light() {
    EnumMap<Ink, Color> inks = new EnumMap<>(Ink.class);
    for (Ink ink : Ink.values()) {
      inks.put(ink, new Color(ink.rgb()));
    }
    // A little darker than on paper, so that planes in the light stay apart from the sheet.
    inks.put(Ink.TINT, new Color(0xECE4D6));
    // And the greys darker, to be read on it.
    inks.put(Ink.QUIET, new Color(0x5F5F5F));
    inks.put(Ink.HIDDEN, new Color(0x787878));
    return new CanvasColours(
        new Color(0xFDFBF7),
        new Color(0xF1ECE2),
        new Color(0xE2DACB),
        new Color(0xF4F0E9),
        new Color(0x6E675C),
        new Color(0xE69F00),
        new Color(0xF6D58C),
        new Color(0x8A3FA0),
        new Color(0x23302B),
        new Color(0xFFFFFF),
        new Color(0xC9B79A),
        new Color(0xF8EFDF),
        new Color(0x9A6A2F),
        new Color(0xEDE7DC),
        inks);
  }

  public static CanvasColours dark() {
    EnumMap<Ink, Color> inks = new EnumMap<>(Ink.class);
    inks.put(Ink.MAIN, new Color(0xF3F1EC));
    inks.put(Ink.QUIET, new Color(0xA3ABAE));
    inks.put(Ink.RIDGE, new Color(0xFF9147));
    inks.put(Ink.VALLEY, new Color(0x62B8F0));
    inks.put(Ink.EDGE, new Color(0xDAD9D4));
    inks.put(Ink.MEASURE, new Color(0x45CFA4));
    inks.put(Ink.HIDDEN, new Color(0x7C878C));
    inks.put(Ink.TINT, new Color(0x273138));
    inks.put(Ink.ALERT, new Color(0xF0A3CF));
    return new CanvasColours(
        new Color(0x14191B),
        new Color(0x1B2225),
        new Color(0x283237),
        new Color(0x1A2023),
        new Color(0x95A0A3),
        new Color(0xF0B429),
        new Color(0x6B5620),
        new Color(0xD49BE6),
        new Color(0xEFECE4),
        new Color(0x15191B),
        new Color(0x54646C),
        new Color(0x8D9AA0),
        new Color(0xD9AE74),
        new Color(0x0E1214),
        inks);
  }

  public Color of(Ink ink) {
    return inks.get(ink);
  }
}
