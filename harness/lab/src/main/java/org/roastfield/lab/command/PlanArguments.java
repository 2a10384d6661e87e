package org.roastfield.lab.command;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.roastfield.lab.files.CookFile;
import org.roastfield.lab.plan.PlanClock;
import org.roastfield.lab.plan.ServiceTimes;
import org.roastfield.lab.result.RunManifest.Setting;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** Options that say for when a cook is planned. */
final class PlanArguments {

  private static final double DAY = 86_400;

  @Option(
      names = "--serve-at",
      paramLabel = "TIME",
      description =
          "When it is to be on the table: 18:30, nearest to what the cook file says, or"
              + " 2026-06-13T18:30; of a time that comes twice, since clocks go back, the first"
              + " (default: serves in the cook file).")
  private Optional<String> serveAt = Optional.empty();

  @Option(
      names = "--zone",
      paramLabel = "ZONE",
      converter = Zone.class,
      description =
          "Time zone by region and city, such as Europe/Stockholm (default: zone in the cook file"
              + " or one beside; without either, clocks are taken never to change).")
  private Optional<ZoneId> zone = Optional.empty();

  @Option(
      names = "--now",
      paramLabel = "TIME",
      description =
          "Clock time that counts as now: nothing can begin before; 14:50, the last such before the"
              + " carving, or with its date (default: the clock of this machine, up to a day after"
              + " the carving).")
  private Optional<String> now = Optional.empty();

  PlanArguments() {}

  /** A time zone by name. */
  static final class Zone implements ITypeConverter<ZoneId> {

    Zone() {}

    @Override
    public ZoneId convert(String text) {
      if (!ZoneId.getAvailableZoneIds().contains(text)) {
        throw new TypeConversionException(
            "must be a region and city, such as Europe/Stockholm, was \"" + text + "\"");
      }
      return ZoneId.of(text);
    }
  }

  Optional<ZoneId> zone() {
    return zone;
  }

  /**
   * When it is served, if that is asked for.
   *
   * @param zone in which it must exist
   */
  Optional<LocalDateTime> service(CookFile file, Optional<ZoneId> zone) {
    Optional<LocalDateTime> service =
        serveAt.map(
            text ->
                isTime(text)
                    ? ServiceTimes.nearest(file, time("--serve-at", text))
                    : dateTime("--serve-at", text));
    service.ifPresent(time -> exists("--serve-at", time, zone));
    return service;
  }

  private static void exists(String option, LocalDateTime time, Optional<ZoneId> zone) {
    zone.flatMap(at -> PlanClock.leftOut(time, at))
        .ifPresent(
            gap -> {
              throw new BadInputException(option + " must be " + gap);
            });
  }

  /**
   * Now after a plan's zero [s]: as stated, or by the clock of the machine if the plan's zero is
   * still to come or was within a day. What is longer past is planned as if it were to come.
   */
  OptionalDouble now(PlanClock plan, Clock machine) {
    if (now.isPresent()) {
      LocalDateTime time = now(now.get(), plan);
      exists("--now", time, plan.zone());
      plan.zone()
          .flatMap(zone -> PlanClock.twice(time, zone))
          .ifPresent(
              twice -> {
                throw new BadInputException("--now must be a time that comes once: " + twice);
              });
      return OptionalDouble.of(plan.timeOf(time));
    }
    double time = plan.timeOf(machine.instant(), machine.getZone());
    return time < DAY ? OptionalDouble.of(time) : OptionalDouble.empty();
  }

  /** A clock time is the last such before the plan's zero. */
  private static LocalDateTime now(String text, PlanClock plan) {
    if (!isTime(text)) {
      return dateTime("--now", text);
    }
    LocalDateTime same = plan.at(0).toLocalDate().atTime(time("--now", text));
    return plan.timeOf(same) > 0 ? same.minusDays(1) : same;
  }

  private static boolean isTime(String text) {
    return text.contains(":") && text.length() <= 8;
  }

  private static LocalTime time(String option, String text) {
    try {
      return LocalTime.parse(text);
    } catch (DateTimeParseException e) {
      throw new BadInputException(
          option + " must be a time such as 18:30, or 2026-06-13T18:30, was \"" + text + "\"");
    }
  }

  private static LocalDateTime dateTime(String option, String text) {
    try {
      return LocalDateTime.parse(text);
    } catch (DateTimeParseException e) {
      throw new BadInputException(
          option + " must be a date and a time, such as 2026-06-13T18:30, was \"" + text + "\"");
    }
  }

  /** What was asked for, for the manifest. */
  List<Setting> settings() {
    List<Setting> settings = new ArrayList<>();
    serveAt.ifPresent(text -> settings.add(new Setting("serve_at", text)));
    zone.ifPresent(name -> settings.add(new Setting("zone", name.toString())));
    now.ifPresent(text -> settings.add(new Setting("now", text)));
    return settings;
  }
}
