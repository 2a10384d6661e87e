package org.roastfield.lab.files;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.roastfield.core.outcome.DonenessScale;

/**
 * What the cook wishes to serve.
 *
 * @param scale that doneness is stated on; stated if doneness is, since the same word means
 *     temperatures 5 to 11 K apart on two of them
 * @param doneness degrees of the scale: none, one for the whole cut, or of a taper three for its
 *     first end, middle and last end
 * @param crust if stated
 * @param ring how deep at most it may be done beyond the wish [m], if stated
 */
public record Wishes(
    Optional<DonenessScale> scale,
    List<String> doneness,
    Optional<Crust> crust,
    OptionalDouble ring) {

  private static final Wishes NONE =
      new Wishes(Optional.empty(), List.of(), Optional.empty(), OptionalDouble.empty());

  private static final String[] STATIONS = {"first-end", "middle", "last-end"};

  /** How brown the crust is to be. */
  public enum Crust {
    PALE("pale"),
    GOLDEN("golden"),
    BROWN("brown"),
    DARK("dark");

    private final String word;

    Crust(String word) {
      this.word = word;
    }

    /** Word used in files. */
    public String word() {
      return word;
    }
  }

  /** Copies the list. */
  public Wishes {
    doneness = List.copyOf(doneness);
  }

  /** Nothing is wished. */
  public static Wishes none() {
    return NONE;
  }

  static Wishes read(Entry entry, boolean taper, List<Fact> facts) {
    Section section = entry.section("scale", "doneness", "crust", "ring");
    Optional<DonenessScale> scale = section.optional("scale").map(Wishes::scale);
    Optional<Entry> doneness = section.optional("doneness");
    if (doneness.isPresent() && scale.isEmpty()) {
      throw section.missing(
          "scale", "trade or research beside doneness, since the words differ by 5 to 11 K");
    }
    if (scale.isPresent() && doneness.isEmpty()) {
      throw section.missing("doneness", "it beside scale");
    }
    if (doneness.isEmpty() && !section.has("crust") && !section.has("ring")) {
      throw entry.error("a wish: doneness with its scale, crust, or ring");
    }
    List<String> degrees =
        doneness.map(wish -> degrees(wish, scale.orElseThrow(), taper)).orElse(List.of());
    Optional<Crust> crust = section.optional("crust").map(Wishes::crust);
    OptionalDouble ring =
        section.has("ring")
            ? OptionalDouble.of(section.quantity("ring", Dimension.LENGTH, 0, 0.5))
            : OptionalDouble.empty();
    entry.collect("wish", facts);
    return new Wishes(scale, degrees, crust, ring);
  }

  private static List<String> degrees(Entry entry, DonenessScale scale, boolean taper) {
    if (!entry.isSection()) {
      return List.of(degree(entry, scale));
    }
    if (!taper) {
      throw entry.error("one degree of doneness, since only a taper has stations");
    }
    Section stations = entry.section(STATIONS);
    return List.of(STATIONS).stream().map(s -> degree(stations.required(s), scale)).toList();
  }

  private static DonenessScale scale(Entry entry) {
    List<String> words = DonenessScale.NAMED.stream().map(DonenessScale::name).toList();
    return DonenessScale.NAMED.stream()
        .filter(scale -> scale.name().equals(entry.text()))
        .findFirst()
        .orElseThrow(() -> entry.error(Spelling.oneOf(words, entry.text())));
  }

  private static String degree(Entry entry, DonenessScale scale) {
    List<String> degrees = scale.degrees();
    if (!degrees.contains(entry.text())) {
      throw entry.error(
          Spelling.oneOf(degrees, entry.text()) + " (the " + scale.name() + " scale)");
    }
    return entry.text();
  }

  private static Crust crust(Entry entry) {
    List<String> words = List.of(Crust.values()).stream().map(Crust::word).toList();
    int index = words.indexOf(entry.text());
    if (index < 0) {
      throw entry.error(Spelling.oneOf(words, entry.text()));
    }
    return Crust.values()[index];
  }
}
