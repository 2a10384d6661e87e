package org.roastfield.lab.cooker;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;

/** What is written is read again as it was; what is there for people is rounded. */
class CookerProfilePropertiesTest {

  @Property(tries = 300)
  void profile_isReadAsItWasWritten(
      @ForAll long seed, @ForAll @StringLength(max = 40) String name) {
    CookerProfile profile = SampleProfiles.random(new Random(seed), whole(name));
    String text = CookerProfileJson.text(profile, "0.1.0");
    CookerProfile read = SampleProfiles.read(profile.id(), text);
    assertEquals(text, CookerProfileJson.text(read, "0.1.0"));
    assertEquals(profile.id(), read.id());
    assertEquals(profile.madeUp(), read.madeUp());
    assertEquals(profile.complete(), read.complete());
    assertEquals(profile.parameters(), read.parameters());
    assertEquals(profile.errors(), read.errors());
    assertEquals(profile.diagnosis(), read.diagnosis());
    assertArrayEquals(profile.belief().mean(), read.belief().mean());
    for (int a = 0; a < profile.parameters().size(); a++) {
      for (int b = 0; b < profile.parameters().size(); b++) {
        assertEquals(profile.belief().covariance(a, b), read.belief().covariance(a, b));
      }
    }
    assertEquals(profile.validity().coolestAir(), read.validity().coolestAir(), 1e-4);
    assertEquals(profile.validity().hottestAir(), read.validity().hottestAir(), 1e-4);
    assertEquals(profile.validity().thinnest(), read.validity().thinnest(), 1e-7);
    assertEquals(profile.validity().thickest(), read.validity().thickest(), 1e-7);
    assertEquals(profile.logs().size(), read.logs().size());
    for (int i = 0; i < profile.logs().size(); i++) {
      CookerProfile.Log one = profile.logs().get(i);
      CookerProfile.Log other = read.logs().get(i);
      assertEquals(one.name(), other.name());
      assertEquals(one.sha256(), other.sha256());
      assertEquals(one.readings(), other.readings());
      assertEquals(one.rms(), other.rms(), 1e-4);
    }
  }

  /** Names of logs are of printable characters. */
  private static String whole(String text) {
    return text.replaceAll("[^ -~\\u00a0-\\ud7ff\\ue000-\\ufefe\\uff00-\\ufffd]", "?");
  }
}
