package midplate.wire;

/**
 * One thing wrong with an input, told so that it can be mended.
 *
 * @param field where: {@code runs[0].rf.A}; {@code request} where it is the whole
 * @param code its short name for programs: {@code rf-out-of-range}
 * @param came what stands there now
 * @param allowed what may stand there, an interval where it is a number
 * @param todo what to do next, one sentence
 * @param message what is wrong, one sentence
 */
public record Fault(String field, String code, String came, String allowed, String todo, String message) {
    /** The same fault of something that stands inside a field. */
    Fault in(String outer) {
        String place = field.equals("request") || field.isEmpty() ? outer : outer + "." + field;
        return new Fault(place, code, came, allowed, todo, message);
    }
}
