package holloway.limits;

/** How the power conductors beside a data cable are covered. */
public enum PowerWiring {
  /** Single conductors in the open, knob and tube for example. */
  OPEN_CONDUCTORS,
  /** Non-metallic sheathed, armoured or metal-clad cable, or conductors in a raceway. */
  SHEATHED
}
