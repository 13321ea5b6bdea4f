package longpoint.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Keys found in a plan file that this version does not know, kept so that saving loses nothing.
 *
 * @param json key to its value as JSON text, in the order found
 */
public record Extras(Map<String, String> json) {
  public static final Extras NONE = new Extras(Map.of());

  public Extras {
    json = Collections.unmodifiableMap(new LinkedHashMap<>(json));
  }
}
