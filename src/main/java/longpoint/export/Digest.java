package longpoint.export;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** The SHA-256 digest of a text in UTF-8. */
final class Digest {
  private Digest() {}

  static byte[] of(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return digest.digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
