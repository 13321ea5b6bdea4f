package longpoint.packet;

import java.util.List;
import longpoint.pipeline.Design;
import longpoint.plan.Problem;
import longpoint.wording.Language;

/** What a mail with a packet says: the job, what to look at first, what is attached, cautions. */
final class MailText {
  private MailText() {}

  static String subject(Design design) {
    return "Roof framing: " + FiguresText.title(design.plan());
  }

  static String of(Design design, List<PacketFile> attached) {
    StringBuilder out = new StringBuilder();
    out.append(FiguresText.title(design.plan())).append('\n');
    out.append(FiguresText.lengths(design.plan().unit())).append('\n');
    List<Problem> first =
        design.problems().stream().filter(p -> p.level() != Problem.Level.NOTE).toList();
    if (!first.isEmpty()) {
      out.append("\nLook at first\n");
      for (Problem p : first) {
        out.append("* ").append(FiguresText.told(p, Language.ENGLISH)).append(' ').append(p.cure());
        out.append('\n');
      }
    }
    out.append("\nAttached\n");
    for (PacketFile file : attached) {
      out.append("* ").append(file.name()).append(": ").append(file.output().about()).append('\n');
    }
    out.append("\nBefore you build from it\n");
    Cautions.ALL.forEach(c -> out.append("* ").append(c).append('\n'));
    return out.toString();
  }
}
