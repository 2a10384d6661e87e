package org.roastfield.lab.plan;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.roastfield.core.plan.Role;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.files.CookFileException;
import org.roastfield.lab.files.CookFileReader;
import org.roastfield.lab.files.CookFileWriter;
import org.roastfield.lab.files.Dimension;
import org.roastfield.lab.files.Quantities;
import org.roastfield.lab.files.Statement;

/** A cook file in which the gentle heat, or the sear, is another. */
final class ChangedFile {

  /** Air around a cut under an open lid [°C]: 20-50 K above a mild day's; assumed. */
  private static final String OPEN_AIR = "50 °C";

  private final CookFile file;
  private final List<Role> roles;

  ChangedFile(CookFile file, List<Role> roles) {
    this.file = file;
    this.roles = roles;
  }

  /** With gentle heat whose air and walls are so much hotter [K]; empty if a stage has none. */
  Optional<CookFile> hotter(double kelvin) {
    return changed(
        Role.GENTLE, stage -> chamber(stage).map(chamber -> heated(stage, chamber, kelvin)));
  }

  /**
   * With sears whose metal, or else air and walls, are so much hotter [K]; empty if there is
   * neither, or it would be hotter than a file may say.
   */
  Optional<CookFile> hotterSear(double kelvin) {
    try {
      return changed(
          Role.SEAR,
          stage ->
              keys(stage, "contact")
                  .map(contact -> heated(stage, "contact", contact, List.of("plate"), kelvin))
                  .or(() -> chamber(stage).map(chamber -> heated(stage, chamber, kelvin))));
    } catch (CookFileException beyond) {
      return Optional.empty();
    }
  }

  /** With all of a face on the metal that a part of it touches in sears. */
  CookFile touching() {
    return changed(Role.SEAR, stage -> Optional.of(touching(stage))).orElseThrow();
  }

  /** A stage, or one of its faces, that touches with all of itself. */
  private static Statement.Keys touching(Statement.Keys part) {
    Statement.Keys all = part;
    for (String key : List.of("faces", "upper", "lower")) {
      Optional<Statement.Keys> inner = keys(part, key);
      all = inner.isPresent() ? all.with(key, touching(inner.get())) : all;
    }
    Optional<Statement.Keys> contact = keys(part, "contact");
    return contact.isPresent() ? all.with("contact", contact.get().with("share", "100 %")) : all;
  }

  private static Statement.Keys heated(
      Statement.Keys stage, Statement.Keys chamber, double kelvin) {
    return heated(stage, "chamber", chamber, List.of("air", "walls"), kelvin);
  }

  private static Statement.Keys heated(
      Statement.Keys stage, String part, Statement.Keys keys, List<String> which, double kelvin) {
    Statement.Keys hot = keys;
    for (String key : which) {
      if (keys.value(key).orElse(null) instanceof Statement.Text text) {
        double temperature = Quantities.temperature(text.text()) + kelvin;
        hot = hot.with(key, Dimension.TEMPERATURE.exactText(temperature));
      }
    }
    return stage.with(part, hot);
  }

  /**
   * With a lid that is opened.
   *
   * @param times since the start of the cook [s]
   * @param duration of each [s]
   * @return empty if the gentle heat has a lid already, or cannot have one
   */
  Optional<CookFile> opened(List<Double> times, double duration) {
    List<Statement> openings = new ArrayList<>();
    for (double time : times) {
      LocalDateTime at = file.starts().plusSeconds(Math.round(time));
      openings.add(
          Statement.keys()
              .with("at", at.truncatedTo(ChronoUnit.SECONDS).toString())
              .with("for", Dimension.TIME.exactText(duration)));
    }
    Statement lid =
        Statement.keys().with("open-air", OPEN_AIR).with("openings", new Statement.Items(openings));
    return changed(
        Role.GENTLE,
        stage ->
            chamber(stage).isPresent() && stage.value("lid").isEmpty()
                ? Optional.of(stage.with("lid", lid))
                : Optional.empty());
  }

  private static Optional<Statement.Keys> chamber(Statement.Keys stage) {
    return keys(stage, "chamber");
  }

  private static Optional<Statement.Keys> keys(Statement.Keys stage, String part) {
    return stage
        .value(part)
        .filter(Statement.Keys.class::isInstance)
        .map(Statement.Keys.class::cast);
  }

  /** A change of one stage; empty if it cannot be. */
  private interface StageChange {
    Optional<Statement.Keys> of(Statement.Keys stage);
  }

  private Optional<CookFile> changed(Role role, StageChange change) {
    Statement.Items stages = (Statement.Items) file.statements().value("stages").orElseThrow();
    List<Statement> changed = new ArrayList<>();
    for (int i = 0; i < stages.items().size(); i++) {
      Statement.Keys stage = (Statement.Keys) stages.items().get(i);
      if (roles.get(file.stages().get(i).firstStage()) != role) {
        changed.add(stage);
        continue;
      }
      Optional<Statement.Keys> other = change.of(stage);
      if (other.isEmpty()) {
        return Optional.empty();
      }
      changed.add(other.get());
    }
    Statement.Keys all = file.statements().with("stages", new Statement.Items(changed));
    byte[] bytes = CookFileWriter.yaml(all).getBytes(StandardCharsets.UTF_8);
    return Optional.of(CookFileReader.parse(file.fileName(), bytes));
  }
}
