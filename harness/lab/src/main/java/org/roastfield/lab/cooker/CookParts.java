package org.roastfield.lab.cooker;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.roastfield.core.cook.Stage;
import org.roastfield.core.cook.StageEnd;
import org.roastfield.core.cook.Wetting;
import org.roastfield.core.shape.Slab;
import org.roastfield.core.surface.Signal;
import org.roastfield.core.surface.Wrap;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookLog;
import org.roastfield.lab.files.FaceSetup;
import org.roastfield.lab.files.LogChannel;
import org.roastfield.lab.files.LogEvent;
import org.roastfield.lab.files.StageSetup;

/** Parts of a cook in order of time, as its file plans it or as its log says it went. */
final class CookParts {

  private final CookFile file;
  private final List<CookPart> parts = new ArrayList<>();
  private final List<String> words = new ArrayList<>();

  private CookParts(CookFile file) {
    this.file = file;
  }

  List<CookPart> parts() {
    return List.copyOf(parts);
  }

  /** What was taken from where. */
  List<String> words() {
    return List.copyOf(words);
  }

  /** As the file plans it, with its end rules. */
  static CookParts planned(CookFile file) {
    CookParts planned = new CookParts(file);
    for (int s = 0; s < file.stages().size(); s++) {
      StageSetup setup = file.stages().get(s);
      for (int leg = 0; leg < setup.stageCount(); leg++) {
        Stage stage = file.cook().stages().get(setup.firstStage() + leg);
        planned.parts.add(
            new CookPart(
                stage.name(),
                planned.upper(setup, leg),
                planned.lower(setup, leg),
                Optional.empty(),
                StageTimes.isRest(file, s),
                CookPart.gentle(setup),
                stage.end(),
                stage.wetting(),
                stage.continued()));
      }
    }
    return planned;
  }

  /** As the log says it went. */
  static CookParts logged(CookFile file, CookLog log, List<LogEvent> events) {
    CookParts logged = new CookParts(file);
    StageTimes times = StageTimes.of(file, log, events);
    LogChannel chamber =
        log.channel(CookLog.CHAMBER)
            .orElse(LogChannel.of(CookLog.CHAMBER, new double[0], new double[0]));
    for (int s = 0; s < times.count(); s++) {
      logged.add(s, times.begins(s), times.ends(s), chamber, events);
    }
    logged.words.addAll(times.words());
    return logged;
  }

  private void add(int s, double begins, double ends, LogChannel chamber, List<LogEvent> events) {
    StageSetup setup = file.stages().get(s);
    boolean rest = StageTimes.isRest(file, s);
    Optional<Signal> air = rest ? Optional.empty() : LoggedAir.of(chamber, begins, ends);
    words.add(chamberWords(setup, air));
    double[] legs = legs(setup, begins, ends, events);
    for (int leg = 0; leg + 1 < legs.length; leg++) {
      boolean turned = setup.stageCount() > 1;
      int file0 = setup.firstStage() + Math.min(leg, setup.stageCount() - 1);
      Stage stated = file.cook().stages().get(file0);
      wrapped(
          new CookPart(
              legs.length > 2 ? stated.name() : setup.name(),
              upper(setup, turned ? leg : 0),
              lower(setup, turned ? leg : 0),
              air,
              rest,
              CookPart.gentle(setup),
              StageEnd.at(legs[leg + 1]),
              leg == 0 ? stated.wetting() : Wetting.NONE,
              false),
          legs[leg],
          legs[leg + 1],
          events);
    }
  }

  private static String chamberWords(StageSetup setup, Optional<Signal> air) {
    return air.isPresent()
        ? String.format(
            Locale.ROOT,
            "air of stage \"%s\": the log's chamber, averaged over %.0f min",
            setup.name(),
            LoggedAir.AVERAGED / 60)
        : "air of stage \"" + setup.name() + "\": the cook file's";
  }

  /** Times at which legs begin and the last one ends. */
  private double[] legs(StageSetup setup, double begins, double ends, List<LogEvent> events) {
    boolean turned = isTurned(setup);
    if (!turned) {
      return new double[] {begins, ends};
    }
    double[] turns =
        events.stream()
            .filter(event -> event.kind() == LogEvent.Kind.TURNED)
            .mapToDouble(LogEvent::time)
            .filter(time -> time > begins && time < ends)
            .toArray();
    double[] legs = new double[setup.stageCount() + 1];
    legs[0] = begins;
    legs[setup.stageCount()] = ends;
    if (turns.length == setup.stageCount() - 1) {
      System.arraycopy(turns, 0, legs, 1, turns.length);
      words.add("turns of stage \"" + setup.name() + "\": the log's");
      return legs;
    }
    double stated = 0;
    for (int leg = 0; leg < setup.stageCount(); leg++) {
      stated += file.cook().stages().get(setup.firstStage() + leg).end().longest(0);
    }
    double passed = 0;
    for (int leg = 0; leg + 1 < setup.stageCount(); leg++) {
      passed += file.cook().stages().get(setup.firstStage() + leg).end().longest(0);
      legs[leg + 1] = begins + (ends - begins) * passed / stated;
    }
    words.add(
        "turns of stage \""
            + setup.name()
            + "\": as the cook file states, over the stage's length in the log");
    return legs;
  }

  private static boolean isTurned(StageSetup setup) {
    return setup.stageCount() > 1 && setup.upper().cover().lid().isEmpty();
  }

  /** A part cut where a wrap is put on or taken off. */
  private void wrapped(CookPart part, double begins, double ends, List<LogEvent> events) {
    List<LogEvent> changes =
        events.stream()
            .filter(
                event ->
                    event.kind() == LogEvent.Kind.WRAPPED
                        || event.kind() == LogEvent.Kind.UNWRAPPED)
            .filter(event -> event.time() < ends)
            .toList();
    boolean covered = !changes.isEmpty() && !part.rest();
    double from = begins;
    Optional<Wrap> wrap = Optional.empty();
    for (LogEvent change : changes) {
      if (covered && change.time() > from) {
        parts.add(piece(part, from, change.time(), wrap, begins));
        from = change.time();
      }
      wrap =
          change.kind() == LogEvent.Kind.WRAPPED
              ? Optional.of(wrap(part, change))
              : Optional.empty();
    }
    parts.add(covered ? piece(part, from, ends, wrap, begins) : part);
  }

  private static CookPart piece(
      CookPart part, double from, double to, Optional<Wrap> wrap, double begins) {
    return new CookPart(
        part.name() + (from > begins ? String.format(Locale.ROOT, ", from %.0f s", from) : ""),
        part.upper().wrapped(wrap),
        part.lower().wrapped(wrap),
        part.loggedAir(),
        part.rest(),
        part.gentle(),
        StageEnd.at(to),
        from > begins ? Wetting.NONE : part.wetting(),
        from > begins || part.continued());
  }

  private Wrap wrap(CookPart part, LogEvent event) {
    Optional<Wrap> stated = part.upper().cover().wrap();
    if (stated.isPresent()) {
      return stated.get();
    }
    boolean paper = event.note().toLowerCase(Locale.ROOT).contains("paper");
    words.add(
        String.format(
            Locale.ROOT,
            "wrap at %.1f min: %s, which the cook file does not state",
            event.time() / 60,
            paper ? "paper" : "foil"));
    return paper ? Wrap.PAPER : Wrap.FOIL;
  }

  private FaceSetup upper(StageSetup setup, int leg) {
    if (!isTurned(setup)) {
      return setup.upper();
    }
    if (file.cook().cut().shape() instanceof Slab) {
      return leg % 2 == 0 ? setup.free() : setup.upper();
    }
    return isOff(setup, leg) ? setup.free() : setup.upper();
  }

  private FaceSetup lower(StageSetup setup, int leg) {
    if (!isTurned(setup)) {
      return setup.lower();
    }
    if (file.cook().cut().shape() instanceof Slab) {
      return leg % 2 == 0 ? setup.upper() : setup.free();
    }
    return upper(setup, leg);
  }

  /** Whether a round cut has its side off the grate in a leg, as {@code Turns.rolls} names it. */
  private boolean isOff(StageSetup setup, int leg) {
    return file.cook().stages().get(setup.firstStage() + leg).name().endsWith(" off");
  }
}
