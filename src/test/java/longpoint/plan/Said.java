package longpoint.plan;

import static org.assertj.core.api.Assertions.assertThat;

import longpoint.wording.Language;

/** What holds of every problem, whatever the plan. */
public final class Said {
  private Said() {}

  /** It is a sentence in every language, with every place in it filled. */
  public static void inEveryLanguage(Problem problem) {
    for (Language language : Language.values()) {
      assertThat(problem.message(language))
          .endsWith(".")
          .doesNotContainPattern("\\{\\d}|\\d\\.\\d{3,}|[a-z]Exception|[@\\[]")
          .matches("(?s)\\P{Ll}.*");
      assertThat(problem.cure(language)).matches("(?s)|\\P{Ll}.*\\.").doesNotContain("{");
    }
    assertThat(problem.message(Language.FRENCH)).isNotEqualTo(problem.message(Language.ENGLISH));
  }
}
