package longpoint.packet;

import java.util.List;
import longpoint.pipeline.Design;
import longpoint.plan.Problem;
import longpoint.sheets.Words;

/** What a mail with a packet says: the job, what to look at first, what is attached, cautions. */
final class MailText {
  private MailText() {}

  static String subject(Design design) {
    return words(design).text("mail.subject", FiguresText.title(design.plan()));
  }

  private static Words words(Design design) {
    return FiguresText.words(design.plan());
  }

  static String of(Design design, List<PacketFile> attached) {
    Words words = words(design);
    StringBuilder out = new StringBuilder();
    out.append(FiguresText.title(design.plan())).append('\n');
    out.append(FiguresText.lengths(design.plan())).append('\n');
    List<Problem> first =
        design.problems().stream().filter(p -> p.level() != Problem.Level.NOTE).toList();
    if (!first.isEmpty()) {
      heading(out, words.text("mail.first"));
      for (Problem p : first) {
        line(out, FiguresText.told(p, words) + " " + p.cure(words.language()));
      }
    }
    heading(out, words.text("mail.attached"));
    for (PacketFile file : attached) {
      line(out, words.text("mail.file", file.name(), words.choice("about", file.output())));
    }
    heading(out, words.text("mail.before"));
    FiguresText.cautions(design.plan()).forEach(c -> line(out, c));
    return out.toString();
  }

  private static void heading(StringBuilder out, String words) {
    out.append('\n').append(words).append('\n');
  }

  private static void line(StringBuilder out, String words) {
    out.append("* ").append(words).append('\n');
  }
}
