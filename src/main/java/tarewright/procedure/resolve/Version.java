package tarewright.procedure.resolve;

/**
 * A version of the questions' numbers. What is done at the bench is the same in all of them.
 *
 * @param letter A, B, C, D
 * @param resolved the procedure with its numbers
 */
public record Version(String letter, Resolved resolved) {
    /** The letter of a version. @param index from 0 */
    static String letter(int index) {
        return String.valueOf((char) ('A' + index));
    }
}
