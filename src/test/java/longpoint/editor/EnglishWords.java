package longpoint.editor;

import java.util.Locale;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** Runs a test class in English wherever it runs. */
public final class EnglishWords implements BeforeAllCallback, AfterAllCallback {
  private final Locale before = Locale.getDefault();

  @Override
  public void beforeAll(ExtensionContext context) {
    Locale.setDefault(Locale.ENGLISH);
  }

  @Override
  public void afterAll(ExtensionContext context) {
    Locale.setDefault(before);
  }
}
