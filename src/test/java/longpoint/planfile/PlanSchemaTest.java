package longpoint.planfile;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion.VersionFlag;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** The schema and the reader take and refuse the same files, judged by an outside validator. */
class PlanSchemaTest {
  private static final Path SCHEMA = Path.of("docs/plan.schema.json");

  private static final JsonSchema PLAN = load();

  private static JsonSchema load() {
    try {
      return JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(Files.readString(SCHEMA));
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static Set<ValidationMessage> faults(String json) {
    return PLAN.validate(json, InputFormat.JSON);
  }

  @Test
  void theSchemaIsItselfValid() throws IOException {
    JsonSchema meta =
        JsonSchemaFactory.getInstance(VersionFlag.V202012)
            .getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    assertThat(meta.validate(Files.readString(SCHEMA), InputFormat.JSON)).isEmpty();
  }

  @TestFactory
  Stream<DynamicTest> schemaAndReaderAgree() {
    return PlanCase.all().stream()
        .map(
            c ->
                DynamicTest.dynamicTest(
                    c.name(),
                    () -> assertThat(faults(c.text()).isEmpty()).as(c.json()).isEqualTo(c.good())));
  }

  @TestFactory
  Stream<DynamicTest> samplesFollowTheSchema() throws IOException {
    return Samples.files().stream()
        .map(
            file ->
                DynamicTest.dynamicTest(
                    file.getFileName().toString(),
                    () -> assertThat(faults(Files.readString(file))).isEmpty()));
  }

  @Test
  void whateverIsWrittenFollowsTheSchema() {
    Random random = new Random(2020);
    for (int n = 0; n < 200; n++) {
      String json = PlanWriter.write(RandomPlans.plan(random));
      assertThat(faults(json)).as(json).isEmpty();
    }
  }
}
