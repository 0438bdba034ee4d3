package org.cupwright.finding;

import org.cupwright.policy.EnumNames;

/**
 * What can be wrong with a survey file, or worth knowing about it.
 *
 * <p>Each kind has two sentences: {@code survey.<name>}, which says what was found and whose argument is the finding's
 * value, and {@code survey.<name>.try}, which says what to try.
 */
public enum FindingKind {
    // any file
    EMPTY_FILE,
    NOT_TEXT,
    NOT_READABLE,
    FILE_TOO_LARGE,
    TOO_MANY_LINES,
    TOO_MANY_COLUMNS,
    TOO_MANY_PARTS,
    TOO_MANY_CORNERS,
    NESTED_TOO_DEEPLY,
    NAME_TOO_LONG,
    // coordinate frames
    UNKNOWN_FRAME,
    FRAME_NOT_FOR_MEASURING,
    OUTSIDE_FRAME,
    LONGITUDE_BEYOND_180,
    // outlines
    NO_GREENS,
    GREENS_NOT_TAGGED,
    WRONG_SHAPE,
    PART_MISSING,
    NOT_A_NUMBER,
    RING_TOO_SHORT,
    RING_OPEN,
    OUTLINE_CROSSES_ITSELF,
    FEATURE_LEFT_OUT,
    GREEN_IN_PARTS,
    GREEN_WITHOUT_REF,
    GREENS_OVERLAP,
    REF_NOT_USABLE,
    REF_DISAGREES,
    REF_USED_TWICE,
    NO_LINE_OF_PLAY,
    LINE_ENDS_FAR_FROM_GREEN,
    LINE_DRAWN_BACKWARDS,
    HOLES_SHARE_GREEN,
    GREEN_IMPOSSIBLE,
    GREEN_VERY_LARGE,
    GREEN_VERY_SMALL,
    PAR_NOT_READABLE,
    LENGTH_NOT_READABLE,
    CUPS_NOT_READABLE,
    HOLE_UNKNOWN,
    // points
    COLUMNS_UNKNOWN,
    DECIMAL_COMMAS,
    LINE_NOT_READABLE,
    LINES_NOT_READABLE,
    NO_POINTS,
    NO_POINTS_OF_CLASS,
    TOO_MANY_POINTS,
    POINTS_TWICE,
    HEIGHTS_DISAGREE,
    POINTS_FAR_FROM_GREENS,
    NO_POINTS_ON_GREENS,
    HEIGHTS_IMPOSSIBLE,
    UNIT_LOOKS_WRONG,
    COLUMNS_EXCHANGED,
    HEIGHTS_STEEP,
    GREENS_STEEP,
    GREEN_WITHOUT_POINTS,
    // what the fitted ground shows
    NO_SURVEY,
    SURVEY_TOO_THIN,
    POINTS_LEFT_OUT,
    POINT_LEFT_OUT,
    PART_NOT_SURVEYED,
    SMALL_PARTS_NOT_SURVEYED,
    SLOPES_UNCERTAIN,
    SLOPES_UNCERTAIN_HERE,
    POINTS_UNEVEN,
    SURVEY_KIND_ASSUMED,
    STRIPS_MEASURED,
    STRIPS_TELL_NOTHING,
    SURVEYS_MEASURED,
    SURVEYS_TELL_NOTHING,
    STEP,
    // what level readings say of it
    SURVEY_TILTED,
    SURVEY_DOMED,
    READING_OVERRULES,
    READING_OFF_GREEN,
    // level spots and ground items
    COLUMN_MISSING,
    SPOT_OFF_GREEN,
    NO_SUCH_PLACE,
    READING_NOT_READABLE,
    NEEDS_LINE_OF_PLAY,
    KIND_UNKNOWN,
    DATE_NOT_READABLE,
    NOT_ON_A_GREEN,
    // drawn ground
    DRAWN_KIND_UNKNOWN,
    DRAWN_SHAPE,
    DRAWN_CROSSES_ITSELF,
    DRAWN_NEEDS_RADIUS,
    DRAWN_NOT_A_NUMBER,
    DRAWN_ID,
    DRAWN_AREA,
    DRAWN_ID_TWICE,
    DRAWN_OFF_GREEN,
    DRAWN_NO_SUCH_PLACE,
    LINE_CUT_SHORT,
    DRAWN_WITHOUT_GREEN;

    /** The name scripts see: {@code ringOpen}. */
    public String jsonName() {
        return EnumNames.lowerCamel(this);
    }

    /** Key of the sentence that says what was found. */
    public String key() {
        return "survey." + jsonName();
    }

    /** Key of the sentence that says what to try. */
    public String tryKey() {
        return key() + ".try";
    }
}
