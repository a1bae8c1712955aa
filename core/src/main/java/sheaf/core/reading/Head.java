package sheaf.core.reading;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What was on the front of the arrow. */
public enum Head {
  /** A field point: a round, ragged hole. */
  FIELD,
  /** A broadhead: a hole with a slit for each blade. */
  BROADHEAD,
  /** The hole does not tell. */
  UNKNOWN;

  private static final String ASKED = "head";

  /** The head ticked as borne by all arrows of a sheet; empty when nothing sure is ticked. */
  public static Optional<Head> ticked(List<FieldReading> fields) {
    Optional<FieldReading> answer =
        fields.stream().filter(field -> field.key().equals(ASKED)).findFirst();
    if (answer.filter(said -> said.says("field points")).isPresent()) {
      return Optional.of(FIELD);
    }
    return answer.filter(said -> said.says("broadheads")).map(any -> BROADHEAD);
  }

  /** The name in JSON. */
  public String label() {
    return name().toLowerCase(Locale.ROOT);
  }
}
