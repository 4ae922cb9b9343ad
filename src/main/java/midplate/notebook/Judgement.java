package midplate.notebook;

import java.util.Collection;

/** Whether something came as foretold, as far as a plate tells. */
enum Judgement {
    /** It did. */
    YES,
    /** It did not. */
    NO,
    /** It may have. */
    UNSURE;

    /** Whether something holds for values of which one is the true one: yes or no where it is the same for each. */
    static Judgement whicheverOf(Collection<Judgement> each) {
        if (each.isEmpty() || each.contains(UNSURE) || (each.contains(YES) && each.contains(NO))) {
            return UNSURE;
        }
        return each.contains(NO) ? NO : YES;
    }

    /** Whether something holds for values that are all true. */
    static Judgement allOf(Collection<Judgement> each) {
        return each.contains(NO) ? NO : each.contains(UNSURE) ? UNSURE : YES;
    }
}
