package holloway.importing;

import holloway.step.StepEntity;
import java.util.List;
import java.util.Set;

/**
 * A space as the model has it, millimetres.
 *
 * @param corners of its footprint, in the world
 */
record RawRoom(
    StepEntity space,
    StepEntity storey,
    List<Vec> corners,
    double floor,
    double ceiling,
    Set<String> notes) {}
