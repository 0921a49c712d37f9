package holloway.certify;

import java.util.Optional;

/**
 * What came out.
 *
 * @param bound units that no plan can cost less than, as far as the certificate was followed; 0
 *     when it could not be
 * @param refusal why the certificate is not accepted, in a sentence; empty when it is
 */
public record Verdict(long bound, Optional<String> refusal) {
  public boolean accepted() {
    return refusal.isEmpty();
  }
}
