package org.cupwright.app.sheets;

import org.cupwright.app.texts.Texts;
import org.cupwright.policy.Policy;
import org.cupwright.policy.Setting;

/** What the course's own settings put on paper, word for word; while one is as it came, it is the reader's own word. */
record CourseText(Texts texts, Policy policy) {
    /** The text of a setting of paper that is not empty as it comes. */
    String of(Setting<String> setting) {
        String text = policy.get(setting);
        String name = setting.key().substring(setting.key().lastIndexOf('.') + 1);
        return text.equals(setting.defaultValue()) ? texts.say("sheet.asItCame." + name) : text;
    }
}
