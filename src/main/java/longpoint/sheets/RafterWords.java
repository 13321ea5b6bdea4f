package longpoint.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import longpoint.framing.square.SquareCut;
import longpoint.framing.stick.Bearing;
import longpoint.framing.stick.Rafter;
import longpoint.framing.stick.RafterEnd;
import longpoint.framing.stick.RafterEnd.Cheek;
import longpoint.framing.stick.Seat;
import longpoint.units.LengthUnit;
import longpoint.units.Rounding;

/** What is said of a rafter: from where to where it is measured, and how each end is cut. */
final class RafterWords {
  /** A length under this, in plan units, is not worth a word. */
  private static final double NOTHING = 1e-3;

  private final Words words;

  RafterWords(Words words) {
    this.words = words;
  }

  /** Its mark and kind, its count by hands, and where it stands in a peak's order. */
  String title(Rafter r) {
    String kind = words.choice("rafter", r.kind());
    return r.mark() + "   " + kind;
  }

  String count(Rafter r) {
    if (!isHanded(r) || r.quantity() == 1) {
      return words.counted("rafter.count", r.quantity());
    }
    return r.mirrored() == 0
        ? words.text("rafter.allAsDrawn", r.quantity())
        : words.text("rafter.hands", r.quantity(), r.quantity() - r.mirrored(), r.mirrored());
  }

  /** Whether left and right make a difference. */
  static boolean isHanded(Rafter r) {
    return isHanded(r.head()) || isHanded(r.foot());
  }

  private static boolean isHanded(RafterEnd end) {
    return Math.abs(end.left().reach() - end.right().reach()) > NOTHING;
  }

  List<String> lines(Rafter r) {
    List<String> lines = new ArrayList<>();
    lines.add(count(r));
    r.difference().ifPresent(d -> lines.add(words.text("rafter.step", words.length(d))));
    if (r.kind().isLevel()) {
      lines.add(ridge(r));
      return lines;
    }
    lines.add(words.text("rafter.line", words.length(r.lineLength()), start(r), end(r)));
    lines.add(off(r));
    lines.add(
        words.text(
            "rafter.plumb",
            words.angle(90 - r.plumbCut()),
            words.angle(90 - r.levelCut()),
            onSquare(r.square().run()),
            onSquare(r.square().rise())));
    addCut(lines, "rafter.headCut", r, r.head());
    if (isTold(r.foot())) {
      addCut(
          lines, r.foot().on() == Bearing.WALL ? "rafter.tailCut" : "rafter.footCut", r, r.foot());
    }
    r.seat().ifPresent(s -> lines.add(seat(s)));
    if (r.drop() > 0) {
      lines.add(drop(r));
    }
    if (r.head().order() > 0) {
      lines.add(words.text("rafter.order", r.head().order()));
    }
    return lines;
  }

  private static boolean isTold(RafterEnd foot) {
    return switch (foot.on()) {
      case WALL -> !isSquare(foot);
      case NOTHING -> false;
      case LEDGER,
          RIDGE,
          RIDGE_END,
          HIP,
          VALLEY,
          GIRDER,
          DECK,
          HEADER,
          TRIMMER,
          POST,
          OPPOSITE,
          SET_BEFORE,
          MITRED,
          COMMONS ->
          true;
    };
  }

  /** How its head is cut, and what comes off it. */
  String headWords(Rafter r) {
    String off =
        Math.abs(r.head().off()) < NOTHING
            ? words.text("rafter.offNothing")
            : words.text("rafter.offHead", words.small(r.head().off(), Rounding.NEAREST));
    return off + " " + words.text("rafter.headCut", on(r.head()), shape(r.head()));
  }

  /** What is done about the edge of a hip. */
  String drop(Rafter r) {
    return words.text("rafter.dropOrBack", words.small(r.drop(), Rounding.NEAREST), backing(r));
  }

  private String backing(Rafter r) {
    String left = words.angle(r.backing().get(0));
    String right = words.angle(r.backing().get(1));
    return left.equals(right) ? left : words.text("rafter.leftRight", left, right);
  }

  private String ridge(Rafter r) {
    double on = -(r.foot().off() + r.head().off());
    return Math.abs(on) < NOTHING
        ? words.text("rafter.ridgeCut", words.length(r.length()))
        : words.text(
            on > 0 ? "rafter.ridgeCut.on" : "rafter.ridgeCut.off",
            words.length(r.length()),
            words.length(r.lineLength()),
            words.small(Math.abs(on), Rounding.NEAREST));
  }

  private String start(Rafter r) {
    return words.text("rafter.from." + key(r.foot()));
  }

  private String end(Rafter r) {
    return words.text("rafter.to." + key(r.head()));
  }

  private static String key(RafterEnd end) {
    return end.on().name().toLowerCase(Locale.ROOT);
  }

  /** What comes off, and the length that is left. */
  private String off(Rafter r) {
    List<String> off = new ArrayList<>();
    if (r.head().off() > NOTHING) {
      off.add(words.text("rafter.offHead", words.small(r.head().off(), Rounding.NEAREST)));
    }
    if (r.foot().off() > NOTHING) {
      off.add(words.text("rafter.offFoot", words.small(r.foot().off(), Rounding.NEAREST)));
    }
    if (r.tail() > 0) {
      off.add(words.text("rafter.tail", words.length(r.tail())));
    }
    if (r.over() > 0) {
      off.add(words.text("rafter.over", words.length(r.over())));
    }
    off.add(words.text("rafter.cutTo", words.length(r.length())));
    return String.join(" ", off);
  }

  /** What an end comes to, with its mark. */
  String on(RafterEnd end) {
    String on = words.text("rafter.on." + key(end));
    return end.by().map(mark -> on + " " + mark).orElse(on);
  }

  private static boolean isSquare(RafterEnd end) {
    return Math.abs(end.left().reach()) < NOTHING && Math.abs(end.right().reach()) < NOTHING;
  }

  private void addCut(List<String> lines, String key, Rafter r, RafterEnd end) {
    String left = cheek(r, end.left());
    String right = cheek(r, end.right());
    lines.add(words.text(key, on(end), shape(end)));
    if (end.on() == Bearing.DECK || isSquare(end)) {
      return;
    }
    if (left.equals(right)) {
      lines.add(words.text("rafter.cut.each", left));
    } else {
      lines.add(words.text("rafter.cut.atLeft", left));
      lines.add(words.text("rafter.cut.atRight", right));
    }
  }

  /** A plumb cut, square or with one cheek or two; or the cut of a foot on a deck. */
  private String shape(RafterEnd end) {
    if (end.on() == Bearing.DECK && end.bevel() > 0) {
      return words.text("rafter.cut.deck", words.angle(end.faceCut()), words.angle(end.bevel()));
    }
    if (isSquare(end)) {
      return words.text("rafter.cut.square");
    }
    if (!end.isDouble()) {
      String hand = end.left().reach() > 0 ? "rafter.cut.left" : "rafter.cut.right";
      return words.text(hand, words.small(Math.abs(end.left().reach()), Rounding.NEAREST));
    }
    boolean notch = end.left().reach() > 0 && end.right().reach() > 0;
    return words.text(notch ? "rafter.cut.notch" : "rafter.cut.double");
  }

  private String cheek(Rafter r, Cheek cheek) {
    Optional<SquareCut> square = r.squareCut(cheek, words.unit());
    String saw = words.angle(90 - cheek.planAngle());
    String top = words.angle(90 - cheek.sideCut());
    return square
        .map(s -> words.text("rafter.cheek", saw, top, onSquare(s.run()), onSquare(s.length())))
        .orElse(words.text("rafter.cut.square"));
  }

  String seat(Seat s) {
    return s.seat() > 0
        ? words.text(
            "rafter.seat",
            words.small(s.seat(), Rounding.NEAREST),
            words.small(s.plumb(), Rounding.NEAREST),
            words.small(s.height(), Rounding.NEAREST),
            words.small(s.notch(), Rounding.NEAREST),
            words.percent(100 * s.share()))
        : words.text("rafter.noSeat", words.small(s.height(), Rounding.NEAREST));
  }

  /** A figure as it is found on a framing square. */
  String onSquare(double figure) {
    return words.decimal(figure, words.unit() == LengthUnit.INCH ? 2 : 0);
  }
}
