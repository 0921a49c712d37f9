package holloway.framing;

import holloway.survey.Placed;
import java.util.List;

/** The placed house with its solid members, floors and attics; all lists sorted by id. */
public record Framed(Placed placed, List<Member> members, List<Deck> decks, List<Attic> attics) {
  public Framed {
    members = List.copyOf(members);
    decks = List.copyOf(decks);
    attics = List.copyOf(attics);
  }

  public List<Member> membersOf(String owner) {
    return members.stream().filter(m -> m.owner().equals(owner)).toList();
  }
}
