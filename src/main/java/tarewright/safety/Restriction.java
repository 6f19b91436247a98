package tarewright.safety;

/** Who may handle a substance, by the tables' own judgement. */
public enum Restriction {
    NONE,
    /** By the teacher, as a demonstration. */
    TEACHER_ONLY,
    /** Not by students. */
    NOT_STUDENTS,
    /** Not in a school. */
    REFUSE
}
