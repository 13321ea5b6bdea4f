package longpoint.export;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.mail.BodyPart;
import jakarta.mail.Multipart;
import jakarta.mail.Session;
import jakarta.mail.internet.MimeMessage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Properties;
import org.junit.jupiter.api.Test;

/** Read back by a mail library that had no part in writing it. */
class MailDraftTest {
  private static final byte[] BYTES = new byte[70_000];

  static {
    for (int i = 0; i < BYTES.length; i++) {
      BYTES[i] = (byte) (i * 31);
    }
  }

  private static byte[] bytes(MailDraft mail) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    mail.write(out);
    return out.toByteArray();
  }

  private static MimeMessage read(MailDraft mail) throws Exception {
    Properties strict = new Properties();
    strict.setProperty("mail.mime.decodefilename", "false");
    return new MimeMessage(Session.getInstance(strict), new ByteArrayInputStream(bytes(mail)));
  }

  @Test
  void textAndFilesComeBack() throws Exception {
    String text = "Gîte \u00BD in = 12.7 mm \n.\nFrom here\n" + "long ".repeat(60) + "\n\ttab \n";
    MailDraft mail =
        new MailDraft(
            "Roof",
            text,
            List.of(
                new MailDraft.Attachment("a b.pdf", "application/pdf", out -> out.write(BYTES)),
                new MailDraft.Attachment("gîte.html", "text/html", out -> out.write('x'))));
    Multipart parts = (Multipart) read(mail).getContent();
    assertThat(parts.getCount()).isEqualTo(3);
    assertThat(((String) parts.getBodyPart(0).getContent()).replace("\r\n", "\n"))
        .isEqualTo(text + "\n");
    BodyPart pdf = parts.getBodyPart(1);
    assertThat(pdf.getFileName()).isEqualTo("a b.pdf");
    assertThat(pdf.isMimeType("application/pdf")).isTrue();
    assertThat(pdf.getInputStream().readAllBytes()).isEqualTo(BYTES);
    assertThat(parts.getBodyPart(2).getFileName()).isEqualTo("gîte.html");
  }

  @Test
  void subjectsOfAnyLengthAndLanguageComeBackAndCannotAddHeaders() throws Exception {
    for (String subject :
        new String[] {"Plain", "Gîte près de l’étang ".repeat(9).strip(), "屋根 🏠", "a=?b?="}) {
      assertThat(read(new MailDraft(subject, "", List.of())).getSubject()).isEqualTo(subject);
    }
    MimeMessage sly = read(new MailDraft("a\r\nBcc: someone@example.org", "", List.of()));
    assertThat(sly.getHeader("Bcc")).isNull();
    assertThat(sly.getSubject()).isEqualTo("a Bcc: someone@example.org");
  }

  /** RFC 5322, 2.1.1: no line of more than 998 characters, and 78 are better; CRLF ends each. */
  @Test
  void linesAreShortAsciiAndEndAsTheyMust() throws Exception {
    MailDraft mail =
        new MailDraft(
            "é".repeat(200),
            "ü".repeat(500),
            List.of(new MailDraft.Attachment("f", "text/plain", out -> out.write(BYTES))));
    String raw = new String(bytes(mail), StandardCharsets.ISO_8859_1);
    assertThat(raw.chars()).allMatch(c -> c < 0x7F);
    assertThat(raw.replace("\r\n", "")).doesNotContain("\r", "\n");
    assertThat(raw.lines()).allMatch(l -> l.length() <= 78);
    assertThat(raw.lines()).noneMatch(l -> l.equals("."));
    assertThat(raw).startsWith("X-Unsent: 1\r\n").doesNotContain("\r\nDate:");
  }
}
