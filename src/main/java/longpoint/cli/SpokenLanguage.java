package longpoint.cli;

import java.util.Optional;
import longpoint.plan.Plan;
import longpoint.wording.Language;
import longpoint.wording.Phrasebook;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The language a command answers in: that asked for, else the plan's own, else English. */
final class SpokenLanguage {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--language",
      paramLabel = "LANGUAGE",
      description =
          "Language of everything that is read: en or fr. Left out, the plan's own, else en.")
  private String key;

  /** What was asked for, if anything. */
  Optional<Language> asked() {
    return Optional.ofNullable(key).map(this::known);
  }

  private Language known(String given) {
    return Language.of(given)
        .orElseThrow(
            () ->
                new ParameterException(
                    spec.commandLine(), "--language is en or fr, not " + given + "."));
  }

  /** As far as it is known without a plan. */
  Language beforePlan() {
    return asked().orElse(Language.ENGLISH);
  }

  Language of(Plan plan) {
    return asked().orElse(plan.language());
  }

  /** What the commands themselves say. */
  static String text(Language language, String key, Object... parts) {
    return Phrasebook.of("cli", language).text(key, parts);
  }
}
