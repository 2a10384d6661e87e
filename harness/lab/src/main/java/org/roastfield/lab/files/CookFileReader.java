package org.roastfield.lab.files;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.air.MoistAir;
import org.roastfield.core.cook.Cook;
import org.roastfield.core.cook.Probe;
import org.roastfield.core.cook.StageEnd;

/**
 * Reads cook files: one YAML 1.2 document of at most 1 MiB, every quantity with its unit.
 *
 * <p>Every mistake is a {@link CookFileException} with line and column. Nothing is clamped; what is
 * assumed stands among the facts.
 */
public final class CookFileReader {

  /** Largest size of a cook file [bytes]. */
  public static final int LARGEST = 1 << 20;

  /** What the key {@code roastfield} must say. */
  public static final String FORMAT = "cook/1";

  private static final int MOST_STAGES = 200;

  private final String fileName;
  private final Section section;
  private final Optional<Path> path;
  private final List<Fact> facts = new ArrayList<>();

  private CookFileReader(String fileName, Section section, Optional<Path> path) {
    this.fileName = fileName;
    this.section = section;
    this.path = path;
  }

  /**
   * Reads a file.
   *
   * @throws IOException if it cannot be read at all
   * @throws CookFileException if it is no cook
   */
  public static CookFile read(Path path) throws IOException {
    return parse(path, SourceText.bytes(path, LARGEST));
  }

  /**
   * Bytes of a file, for {@link #parse}.
   *
   * @throws IOException if it cannot be read at all
   * @throws CookFileException if it is larger than {@link #LARGEST}
   */
  public static byte[] bytes(Path path) throws IOException {
    return SourceText.bytes(path, LARGEST);
  }

  /**
   * Reads the bytes of a file that has a place, where the cooker that it names is looked for.
   *
   * @param path of the file
   * @param bytes content; not modified
   * @throws IOException if the profile of a cooker cannot be read at all
   * @throws CookFileException if it is no cook
   */
  public static CookFile parse(Path path, byte[] bytes) throws IOException {
    return reader(SourceText.name(path), bytes, Optional.of(path)).cookFile();
  }

  /**
   * Reads the bytes of a file without a place: the profile of a cooker is not looked for.
   *
   * @param fileName last part of its path, for messages
   * @param bytes content; not modified
   * @throws CookFileException if it is no cook
   */
  public static CookFile parse(String fileName, byte[] bytes) {
    try {
      return reader(fileName, bytes, Optional.empty()).cookFile();
    } catch (IOException e) {
      throw new UncheckedIOException("nothing is read without a place", e);
    }
  }

  private static CookFileReader reader(String fileName, byte[] bytes, Optional<Path> path) {
    if (bytes.length > LARGEST) {
      throw new CookFileException(
          fileName, 1, 1, bytes.length + " bytes", "at most " + LARGEST + " bytes");
    }
    SourceText source = SourceText.decode(fileName, bytes);
    Section section =
        new Entry(fileName, YamlTree.rootOf(source))
            .section(
                "roastfield",
                "name",
                "made-up",
                "starts",
                "serves",
                "altitude",
                "cooker",
                "cut",
                "probes",
                "stages",
                "wishes",
                "plan");
    return new CookFileReader(fileName, section, path);
  }

  private CookFile cookFile() throws IOException {
    Entry format = section.required("roastfield");
    if (!format.text().equals(FORMAT)) {
      throw format.error(FORMAT);
    }
    String name = section.required("name").name();
    boolean madeUp = section.optional("made-up").map(Entry::flag).orElse(false);
    LocalDateTime starts = Clock.read(section.required("starts"));
    double pressure = pressure();
    CutSetup cut = CutReader.read(section.required("cut"));
    facts.addAll(cut.facts());
    List<Probe> probes = new ProbeReader(cut.cut().shape(), facts).read(section);
    StageReader stages =
        new StageReader(cut, pressure, new EndReader(starts, probes), new CoverReader(starts));
    Entry stagesEntry = section.required("stages");
    if (stagesEntry.items().size() > MOST_STAGES) {
      throw stagesEntry.error("at most " + MOST_STAGES + " stages");
    }
    stagesEntry.items().forEach(stages::read);
    Cook cook = stagesEntry.guard(() -> new Cook(cut.cut(), stages.stages(), probes));
    return new CookFile(
        fileName,
        name,
        starts,
        madeUp,
        cut.food(),
        cook,
        pressure,
        cut.extent(),
        cut.taper(),
        facts,
        stages.setups(),
        notes(starts, cut),
        section.statements());
  }

  private CookNotes notes(LocalDateTime starts, CutSetup cut) throws IOException {
    Optional<LocalDateTime> serves = section.optional("serves").map(e -> serves(e, starts));
    Optional<Entry> cooker = section.optional("cooker");
    boolean taper = cut.taper().isPresent();
    Wishes wishes =
        section.optional("wishes").map(e -> Wishes.read(e, taper, facts)).orElse(Wishes.none());
    boolean doneness = !wishes.doneness().isEmpty();
    return new CookNotes(
        serves,
        wishes,
        cooker.isPresent() ? Optional.of(cooker(cooker.get())) : Optional.empty(),
        cut.surface(),
        cut.handling(),
        section
            .optional("plan")
            .map(e -> PlanReader.read(e, serves, doneness, cut.cut().shape(), taper, facts))
            .orElse(PlanWishes.none()));
  }

  private CookerReference cooker(Entry entry) throws IOException {
    facts.add(new Fact("cooker", entry.text() + " (plan uses its profile)"));
    return Cookers.read(entry, path);
  }

  private LocalDateTime serves(Entry entry, LocalDateTime starts) {
    LocalDateTime clock = Clock.read(entry);
    double time = Duration.between(starts, clock).toSeconds();
    if (!(time > 0 && time <= StageEnd.LONGEST)) {
      throw entry.error("a clock time after " + starts + " and within ten days of it");
    }
    facts.add(new Fact("served at", entry.text()));
    return clock;
  }

  private double pressure() {
    Entry entry = section.optional("altitude").orElse(null);
    if (entry == null) {
      facts.add(new Fact("altitude", "0 m (not stated, so assumed)"));
      return MoistAir.STANDARD_PRESSURE;
    }
    facts.add(new Fact("altitude", entry.text()));
    return MoistAir.pressureAtAltitude(entry.quantity(Dimension.ALTITUDE, -500, 9000));
  }
}
