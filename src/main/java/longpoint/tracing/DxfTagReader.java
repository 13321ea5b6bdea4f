package longpoint.tracing;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import longpoint.stop.CalledOff;
import longpoint.wording.Phrase;

/**
 * Cuts DXF text into tags: a group code on one line, its value on the next (published DXF
 * reference). Text is UTF-8 if it can be, else in the code page the file names.
 */
final class DxfTagReader {
  /** A plan of a large house with every block is some 10 MB. */
  static final int MOST_BYTES = 64 << 20;

  private static final int LONGEST_LINE = 100_000;
  private static final String BINARY = "AutoCAD Binary DXF";
  private static final Pattern DWG = Pattern.compile("AC1[0-9]{3}[\\s\\S]*");
  private static final Pattern CODE_PAGE =
      Pattern.compile("\\$DWGCODEPAGE\\s+3\\s+ANSI_([0-9]{3,5})", Pattern.CASE_INSENSITIVE);
  private static final int HEADER_BYTES = 20_000;

  private final BufferedReader lines;
  private int line;

  private DxfTagReader(BufferedReader lines) {
    this.lines = lines;
  }

  static DxfTagReader of(byte[] bytes) throws TracingException {
    if (bytes.length > MOST_BYTES) {
      throw TracingException.whole(Phrase.of("tracing.large", MOST_BYTES >> 20));
    }
    String head =
        new String(bytes, 0, Math.min(bytes.length, HEADER_BYTES), StandardCharsets.ISO_8859_1);
    if (head.startsWith(BINARY)) {
      throw TracingException.whole(Phrase.of("tracing.binary"));
    }
    if (DWG.matcher(head).matches()) {
      throw TracingException.whole(Phrase.of("tracing.dwg"));
    }
    int mark = head.startsWith("\u00EF\u00BB\u00BF") ? 3 : 0;
    ByteArrayInputStream in = new ByteArrayInputStream(bytes, mark, bytes.length - mark);
    Charset charset = isUtf8(bytes) ? StandardCharsets.UTF_8 : codePage(head);
    return new DxfTagReader(new BufferedReader(new InputStreamReader(in, charset)));
  }

  private static boolean isUtf8(byte[] bytes) {
    try {
      StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
      return true;
    } catch (CharacterCodingException e) {
      return false;
    }
  }

  private static Charset codePage(String head) {
    Matcher page = CODE_PAGE.matcher(head);
    String name = page.find() ? "windows-" + page.group(1) : "windows-1252";
    return Charset.isSupported(name) ? Charset.forName(name) : StandardCharsets.ISO_8859_1;
  }

  /** The next tag that is no comment; empty at the end of the file. */
  Optional<DxfTag> next() throws TracingException {
    try {
      while (true) {
        CalledOff.check();
        String code = nextLine();
        if (code == null || code.isBlank() && !lines.ready()) {
          return Optional.empty();
        }
        int number = code(code.strip());
        String value = nextLine();
        if (value == null) {
          throw TracingException.at(line, Phrase.of("tracing.cut"));
        }
        if (number != 999) {
          return Optional.of(new DxfTag(number, number < 10 ? value.strip() : value, line));
        }
      }
    } catch (TracingException e) {
      throw e;
    } catch (IOException e) {
      throw TracingException.whole(Phrase.of("tracing.drawingNotRead"), e);
    }
  }

  private int code(String text) throws TracingException {
    try {
      return Integer.parseInt(text);
    } catch (NumberFormatException e) {
      throw TracingException.at(
          line, Phrase.of(line == 1 ? "tracing.notDxf" : "tracing.groupCode"));
    }
  }

  private String nextLine() throws IOException {
    String text = lines.readLine();
    line++;
    if (text != null && text.length() > LONGEST_LINE) {
      throw TracingException.at(line, Phrase.of("tracing.longLine"));
    }
    return text;
  }
}
