package org.cupwright.app.storage.json;

import org.cupwright.policy.EnumNames;
import tools.jackson.databind.cfg.MapperConfig;
import tools.jackson.databind.introspect.AnnotatedClass;
import tools.jackson.databind.introspect.JacksonAnnotationIntrospector;

/** Writes every choice as {@link EnumNames} does, so that JSON has one way of writing them. */
final class LowerCamelChoices extends JacksonAnnotationIntrospector {
    private static final long serialVersionUID = 1L;

    @Override
    public String[] findEnumValues(
            MapperConfig<?> config, AnnotatedClass annotated, Enum<?>[] choices, String[] names) {
        for (int i = 0; i < choices.length; i++) {
            names[i] = EnumNames.lowerCamel(choices[i]);
        }
        return names;
    }
}
