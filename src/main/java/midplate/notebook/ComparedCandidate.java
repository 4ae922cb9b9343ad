package midplate.notebook;

import java.util.Optional;

/**
 * What a sample might be, without having run beside it.
 *
 * @param compound its id, its name, and what it is as far as somebody said it
 * @param rf its Rf as printed or read elsewhere, where there is one
 * @param hrf its tabulated hRf, where there is one
 */
public record ComparedCandidate(StudySpot compound, Optional<Entered> rf, Optional<Entered> hrf) {}
