package holloway.pipeline;

import holloway.framing.Arch;
import holloway.framing.Attic;
import holloway.framing.Dormers;
import holloway.framing.FlatRoof;
import holloway.framing.Framed;
import holloway.framing.Framing;
import holloway.framing.KneeDormers;
import holloway.framing.KneeRoof;
import holloway.hollow.AtticsBeside;
import holloway.house.Dormer;
import holloway.house.Fill;
import holloway.house.Roof;
import holloway.plan.Plan;
import holloway.survey.Placed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What was understood of the spaces under unusual roofs, for {@code check HOUSE}. */
final class RoofNotes {
  private RoofNotes() {}

  /** None for a house with plain roofs. */
  static List<Plan.FindingLine> of(Placed placed) {
    List<Roof> kneed = placed.house().roofs().stream().filter(r -> !r.knees().isEmpty()).toList();
    List<Plan.FindingLine> out = new ArrayList<>();
    boolean flat = placed.house().roofs().stream().anyMatch(r -> r.shape() == Roof.Shape.FLAT);
    boolean dormers = placed.house().roofs().stream().anyMatch(r -> !r.dormers().isEmpty());
    boolean arched = placed.house().roofs().stream().anyMatch(r -> r.shape() == Roof.Shape.ARCHED);
    if (!kneed.isEmpty() || flat || dormers || arched) {
      Framed framed = Framing.of(placed);
      arches(framed, out);
      flats(framed, out);
      disbelieved(framed, out);
      kneed.forEach(r -> sides(framed, r, out));
    }
    besides(placed).forEach(t -> out.add(line(t)));
    return out;
  }

  /** Attics that may lead into each other, and what to write once somebody has looked. */
  static List<String> besides(Placed placed) {
    if (placed.house().roofs().size() < 2) {
      return List.of();
    }
    List<Attic> attics = Framing.of(placed).attics();
    Stream<String> disbelieved =
        AtticsBeside.disbelieved(attics).stream()
            .map(r -> "The " + r.what() + " is not believed: " + r.why() + ".");
    return Stream.concat(disbelieved, AtticsBeside.unstated(attics).stream().map(RoofNotes::beside))
        .toList();
  }

  private static String beside(AtticsBeside s) {
    return String.format(
        Locale.ROOT,
        "The attics of '%s' and '%s' lie side by side along %.2f m; nobody stated whether one leads"
            + " into the other: taken as shut, also where one roof runs onto the other. Look with a"
            + " lamp from the hatch, stay on the joists; an end wall or old sheathing may be there"
            + " for fire or to brace the roof: never open it yourself. Then write under '%1$s' joins:"
            + " [{ to: %2$s, size: WIDTH x HEIGHT }], under a roof that runs onto the other one"
            + " valley: cut-through or valley: laid-over instead of the size, or joins:"
            + " [{ to: %2$s, shut: yes }]",
        s.a().roof().name(),
        s.b().roof().name(),
        s.along().length() / 1e9);
  }

  private static void sides(Framed framed, Roof roof, List<Plan.FindingLine> out) {
    Optional<String> trouble =
        KneeRoof.of(framed.placed(), framed.decks(), roof).flatMap(KneeRoof::trouble);
    trouble.ifPresent(
        t ->
            out.add(
                line("There are no side attics under the roof '" + roof.name() + "': " + t + ".")));
    roof.dormers().forEach(d -> out.add(line(dormer(framed, roof, d))));
    for (Attic a : framed.attics()) {
      if (a.roof().name().equals(roof.name())) {
        out.add(
            line(
                String.format(
                    Locale.ROOT,
                    "Side attic '%s': %.2f m by %.2f m from the studs of the knee wall to the outer"
                        + " face; %s.",
                    a.id(),
                    a.outline().xRange().length() / 1e9,
                    a.outline().yRange().length() / 1e9,
                    a.doors().isEmpty()
                        ? "no door or opening in the knee wall leads into it, so nobody gets there"
                        : "entered from the " + a.doors().get(0).room())));
      }
    }
  }

  private static String dormer(Framed framed, Roof roof, Dormer d) {
    String where =
        "The dormer of '"
            + d.room().orElseThrow()
            + "' over the "
            + d.side().word()
            + " eave of '"
            + roof.name()
            + "'";
    String shut =
        "the knee wall stops at its cheeks, and behind that wall its whole width is shut from there"
            + " to the outer wall, also outside its front: nobody crawls and no cable passes there";
    return KneeDormers.trouble(framed.placed(), framed.decks(), roof, d)
            .map(
                why ->
                    where + " cannot stand as stated: " + why + ". It is not framed; but " + shut)
            .orElse(where + ": " + shut)
        + ".";
  }

  private static void arches(Framed framed, List<Plan.FindingLine> out) {
    framed.attics().stream()
        .filter(a -> a.roof().shape() == Roof.Shape.ARCHED && Arch.of(a).isEmpty())
        .map(a -> a.roof().name())
        .distinct()
        .forEach(
            name ->
                out.add(
                    line(
                        "The arch of '"
                            + name
                            + "' is not believed: no part of a circle is that high over the house,"
                            + " a half one at most. Nobody is taken to get in under it.")));
  }

  private static void disbelieved(Framed framed, List<Plan.FindingLine> out) {
    for (Roof r : framed.placed().house().roofs()) {
      for (Dormer d : r.knees().isEmpty() ? r.dormers() : List.<Dormer>of()) {
        Dormers.trouble(framed.attics(), r, d)
            .ifPresent(
                why ->
                    out.add(
                        line(
                            "The dormer over the "
                                + d.side().word()
                                + " eave of '"
                                + r.name()
                                + "' is not believed: "
                                + why
                                + ".")));
      }
    }
  }

  private static String filled(Fill fill) {
    return switch (fill) {
      case EMPTY -> "empty";
      case FOAM -> "filled with foam";
      case LOOSE -> "filled with loose fill";
      case DENSE_PACKED -> "filled with dense-packed fill";
      default -> "filled with " + fill.word() + "s";
    };
  }

  private static void flats(Framed framed, List<Plan.FindingLine> out) {
    for (FlatRoof f : FlatRoof.of(framed.placed(), framed.decks())) {
      out.add(
          line(
              String.format(
                  Locale.ROOT,
                  "Flat roof '%s': no attic, cable lies between its joists, which run %s; %d mm"
                      + " deep, %s.",
                  f.id(),
                  f.roof().run().orElseThrow().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                  Math.round(f.z().length() / 1e6),
                  f.roof().fill() == Fill.UNKNOWN
                      ? "what fills them is not known"
                      : filled(f.roof().fill()))));
    }
    for (Roof r : framed.placed().house().roofs()) {
      if (r.shape() == Roof.Shape.FLAT && r.run().isEmpty() && r.heel().isEmpty()) {
        out.add(
            line(
                "Nothing runs in the flat roof '"
                    + r.name()
                    + "': say which way its joists run (run: east-west)."));
      }
    }
  }

  private static Plan.FindingLine line(String text) {
    return new Plan.FindingLine(
        "under-the-roof", "note", Optional.empty(), "as stated in the house file", text);
  }
}
