package holloway.housefile;

import static holloway.housefile.Table.may;

import holloway.catalog.Cable;
import holloway.catalog.Cables;
import holloway.request.Job;
import holloway.units.Length;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The keys of {@code job}: what the rules ask of the work and of the cable that is bought. */
final class JobReader {
  private static final Table LISTINGS =
      Table.of("listings", "what is printed on the jackets, by cable kind")
          .plus(
              Cables.all().stream()
                  .map(c -> may(c.kind(), Shape.wordsOf(Job.Listing.class), listed(c)))
                  .toList());

  static final Table TABLE =
      Table.of(
          "job",
          "what the rules ask of the work and of the cable",
          may(
              "speed",
              new Shape.Words(Arrays.stream(Job.Speed.values()).map(Job.Speed::word).toList()),
              "that every four-pair run has to carry"),
          may("coldest", new Shape.Text(Form.TEMPERATURE), "the air while cable is pulled"),
          may(
              "cords",
              new Shape.Len(Length.mm(100), Length.mm(85_000)),
              "all cords of one channel together, at both ends; 10 m unless said"),
          may("listings", new Shape.MapOf(LISTINGS), "what is printed on the jackets"));

  private JobReader() {}

  private static String listed(Cable c) {
    return c.fibre() ? "ofn, ofnr or ofnp; none for outdoors alone" : "cmx, cm, cmr or cmp; none";
  }

  static Job read(Entry house) {
    Optional<Entry> job = house.map("job", TABLE);
    Map<String, Job.Listing> listings = new TreeMap<>();
    job.flatMap(j -> j.map("listings", LISTINGS))
        .ifPresent(
            l ->
                LISTINGS.names().stream()
                    .filter(l::has)
                    .forEach(
                        k -> l.choice(k, Job.Listing.class).ifPresent(v -> listings.put(k, v))));
    return job.map(
            j ->
                new Job(
                    j.text("speed").flatMap(JobReader::speed),
                    j.parsed("coldest", s -> Forms.celsius(s.text())),
                    j.length("cords").map(f -> f.value()),
                    listings))
        .orElse(Job.UNSTATED);
  }

  private static Optional<Job.Speed> speed(String word) {
    return Arrays.stream(Job.Speed.values()).filter(s -> s.word().equals(word)).findFirst();
  }

  /** The same as it would be written. */
  static Map<String, Object> write(Job job) {
    Map<String, Object> out = new LinkedHashMap<>();
    job.speed().ifPresent(s -> out.put("speed", s.word()));
    job.coldC().ifPresent(c -> out.put("coldest", c + " C"));
    job.cords().ifPresent(c -> out.put("cords", Words.of(c)));
    Map<String, Object> listings = new LinkedHashMap<>();
    List<String> kinds = job.listings().keySet().stream().sorted().toList();
    kinds.forEach(k -> listings.put(k, job.listings().get(k).word()));
    if (!listings.isEmpty()) {
      out.put("listings", listings);
    }
    return out;
  }
}
