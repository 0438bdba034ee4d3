package org.cupwright.app.desk.training;

import org.cupwright.app.storage.training.Exercise;
import org.cupwright.app.storage.training.HowWell;
import org.cupwright.app.storage.training.Skill;
import org.cupwright.message.Message.Translated;
import org.cupwright.policy.EnumNames;

/** What skills and exercises are called. */
public final class SkillWord {
    private SkillWord() {}

    /** The key of a skill's name. */
    public static String key(Skill skill) {
        return "training.skill." + EnumNames.lowerCamel(skill);
    }

    /** The key of what it takes to be signed off for it. */
    public static String takes(Skill skill) {
        return "training.takes." + EnumNames.lowerCamel(skill);
    }

    /** The key of how well something was done. */
    public static String key(HowWell how) {
        return "training.how." + EnumNames.lowerCamel(how);
    }

    /** The key of an exercise's name. */
    public static String key(Exercise exercise) {
        return "training.exercise." + EnumNames.lowerCamel(exercise);
    }

    /** The key of what is tapped when it went well. */
    public static String yes(Exercise exercise) {
        return "training.yes." + EnumNames.lowerCamel(exercise);
    }

    /** The key of what is tapped when it did not. */
    public static String no(Exercise exercise) {
        return "training.no." + EnumNames.lowerCamel(exercise);
    }

    static Translated of(Skill skill) {
        return new Translated(key(skill));
    }
}
