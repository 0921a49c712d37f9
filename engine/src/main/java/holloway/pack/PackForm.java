package holloway.pack;

/**
 * How a pack is written.
 *
 * @param paper what its PDF is printed on
 */
public record PackForm(Language language, PaperSize paper) {}
