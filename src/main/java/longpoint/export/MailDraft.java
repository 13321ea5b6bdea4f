package longpoint.export;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A mail that has not been sent: a message of RFC 5322 with the files attached as RFC 2045 and 2183
 * say, which a mail program opens ready to be addressed.
 *
 * <p>It has neither sender nor date, which the program fills in when the mail is sent; so the same
 * mail gives the same bytes. {@code X-Unsent: 1} is how common mail programs know a draft.
 *
 * @param subject any text
 * @param text of the mail, lines ending in a line feed
 * @param attachments in order
 */
public record MailDraft(String subject, String text, List<Attachment> attachments) {
  /** No line of base64 or of quoted-printable can hold an equals sign before an underscore. */
  private static final String BOUNDARY = "=_longpoint_packet_=";

  private static final String END = "\r\n";

  /** An encoded word is 75 characters long at most (RFC 2047): so many bytes of text. */
  private static final int WORD_BYTES = 42;

  /** A line of quoted-printable is 76 characters long at most (RFC 2045). */
  private static final int LINE = 75;

  /**
   * A file that goes along.
   *
   * @param type of its content, such as {@code application/pdf}
   */
  public record Attachment(String name, String type, ZipWriter.Content content) {}

  public MailDraft {
    Objects.requireNonNull(subject);
    Objects.requireNonNull(text);
    attachments = List.copyOf(attachments);
  }

  /**
   * Writes the mail. The stream is flushed, not closed.
   *
   * @throws IOException if the stream cannot be written
   */
  public void write(OutputStream out) throws IOException {
    ascii(out, "X-Unsent: 1", "Subject: " + words(subject), "MIME-Version: 1.0");
    ascii(out, "Content-Type: multipart/mixed; boundary=\"" + BOUNDARY + "\"", "");
    ascii(out, "--" + BOUNDARY, "Content-Type: text/plain; charset=utf-8");
    ascii(out, "Content-Transfer-Encoding: quoted-printable", "", quoted(text));
    for (Attachment attachment : attachments) {
      ascii(out, "--" + BOUNDARY, "Content-Type: " + attachment.type());
      ascii(out, "Content-Transfer-Encoding: base64");
      ascii(out, "Content-Disposition: attachment;" + END + " " + fileName(attachment.name()), "");
      OutputStream open = new Unclosed(out);
      try (OutputStream base64 = Base64.getMimeEncoder().wrap(open)) {
        attachment.content().writeTo(base64);
      }
      ascii(out, "");
    }
    ascii(out, "--" + BOUNDARY + "--");
    out.flush();
  }

  private static void ascii(OutputStream out, String... lines) throws IOException {
    for (String line : lines) {
      out.write((line + END).getBytes(StandardCharsets.US_ASCII));
    }
  }

  /** Plain where it can be, else in encoded words, which are never cut inside a character. */
  private static String words(String text) {
    String line = text.replaceAll("[\\p{Cntrl}]+", " ").strip();
    if (line.length() <= 60 && line.chars().allMatch(c -> c >= ' ' && c < 0x7F && c != '=')) {
      return line;
    }
    StringBuilder out = new StringBuilder();
    StringBuilder word = new StringBuilder();
    for (int c : line.codePoints().toArray()) {
      String sign = Character.toString(c);
      if (utf8(word + sign).length > WORD_BYTES) {
        out.append(word(word)).append(END).append(' ');
        word.setLength(0);
      }
      word.append(sign);
    }
    return out.append(word(word)).toString();
  }

  private static String word(CharSequence text) {
    return "=?utf-8?B?" + Base64.getEncoder().encodeToString(utf8(text.toString())) + "?=";
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** Quoted where it is ASCII, else as RFC 2231 says. */
  private static String fileName(String name) {
    boolean plain = name.chars().allMatch(c -> c >= ' ' && c < 0x7F && c != '"' && c != '\\');
    if (plain) {
      return "filename=\"" + name + "\"";
    }
    StringBuilder out = new StringBuilder("filename*=utf-8''");
    for (byte b : utf8(name)) {
      boolean safe = b == '.' || b == '-' || b == '_' || b > 0 && Character.isLetterOrDigit(b);
      out.append(safe ? String.valueOf((char) b) : String.format(Locale.ROOT, "%%%02X", b & 0xFF));
    }
    return out.toString();
  }

  private static String quoted(String text) {
    StringBuilder out = new StringBuilder();
    for (String line : text.split("\n", -1)) {
      int column = 0;
      byte[] bytes = utf8(line.replace("\r", ""));
      for (int i = 0; i < bytes.length; i++) {
        byte b = bytes[i];
        boolean last = i == bytes.length - 1;
        boolean plain = b > ' ' && b < 0x7F && b != '=' || b == ' ' && !last;
        // A full stop alone on a line would end the mail for some servers.
        boolean stop = b == '.' && column == 0;
        String sign =
            plain && !stop
                ? String.valueOf((char) b)
                : String.format(Locale.ROOT, "=%02X", b & 0xFF);
        if (column + sign.length() > LINE) {
          out.append('=').append(END);
          column = 0;
        }
        out.append(sign);
        column += sign.length();
      }
      out.append(END);
    }
    return out.toString();
  }

  /** Lets the encoder write its last signs without closing the mail. */
  private static final class Unclosed extends java.io.FilterOutputStream {
    Unclosed(OutputStream out) {
      super(out);
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws IOException {
      out.write(bytes, from, length);
    }

    @Override
    public void close() throws IOException {
      flush();
    }
  }
}
