package holloway.survey;

import holloway.house.Where;
import holloway.units.Length;

/**
 * One measurement on a walk from face to face.
 *
 * @param what as a person would know it again, with its line in the file
 * @param where its line in the file
 * @param value positive eastward, northward or upward
 * @param spread one standard deviation
 * @param sum of the values so far, this one included
 */
public record Step(String what, Where where, Length value, Length spread, Length sum) {
  static Step of(Observation o, long value, long sum) {
    return new Step(
        o.text(), o.label().where(), new Length(value), new Length(o.spread()), new Length(sum));
  }
}
