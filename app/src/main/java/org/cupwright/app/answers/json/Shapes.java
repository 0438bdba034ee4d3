package org.cupwright.app.answers.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonProperty;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.cupwright.app.answers.SurveyText;
import org.cupwright.app.storage.SurveyVersion;
import org.cupwright.app.storage.json.FactJson;
import org.cupwright.app.texts.Texts;
import org.cupwright.course.Course;
import org.cupwright.course.Hole;
import org.cupwright.cupchange.Fact;
import org.cupwright.finding.FindingKind;
import org.cupwright.formats.table.NotReadLine;
import org.cupwright.green.PlaneFit;
import org.cupwright.holelocation.Difficulty;
import org.cupwright.holelocation.DifficultyClass;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.message.Message;
import org.cupwright.policy.EnumNames;
import org.cupwright.turf.weather.WeatherBasis;
import org.cupwright.turf.weather.WeatherSource;
import org.cupwright.units.Heading;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/**
 * Answers as JSON, the same at every door: records by the names of their components and in their order, numbers to
 * 0.0001, choices in lower camel case, messages as sentences, null where nothing is known.
 */
public final class Shapes {
    private final SimpleModule types = new SimpleModule();

    public Shapes(Texts texts) {
        as(Double.class, Json::number);
        as(double.class, Json::number);
        as(OptionalDouble.class, Json::number);
        as(Enum.class, EnumNames::lowerCamel);
        as(RuleId.class, RuleId::id);
        as(FindingKind.class, FindingKind::jsonName);
        as(Message.class, texts::say);
        as(Message.Argument.class, texts::show);
        as(Path.class, Path::toString);
        as(Course.class, Course::id);
        as(Hole.class, Hole::id);
        as(Fact.class, fact -> JsonMapper.shared().readTree(FactJson.write(fact)));
        as(WeatherBasis.class, Shapes::basis);
        as(PlaneFit.class, Shapes::slope);
        as(SurveyVersion.class, Shapes::survey);
    }

    /** Says that values of a type are written as others. */
    <T> Shapes as(Class<T> type, Function<? super T, ?> shape) {
        types.addSerializer(type, new As<>(type, shape));
        return this;
    }

    /** The answer as a tree that can be printed, or stand in a larger one. */
    public JsonNode tree(Object answer) {
        return JsonMapper.builder()
                .addModule(types)
                .addMixIn(RuleResult.class, RuleShape.class)
                .addMixIn(Difficulty.class, DifficultyShape.class)
                .addMixIn(NotReadLine.class, LineShape.class)
                .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                .build()
                .valueToTree(answer);
    }

    private static Shape basis(WeatherBasis basis) {
        Shape shape = new Shape().with("from", basis.first()).with("to", basis.last());
        for (WeatherSource source : WeatherSource.values()) {
            shape.with(EnumNames.lowerCamel(source), basis.days(source));
        }
        return shape;
    }

    private static Shape slope(PlaneFit plane) {
        return new Shape()
                .with("slopePercent", plane.slopePercent())
                .with("downhillDegrees", plane.downhill().map(Heading::degrees))
                .with("standardErrorPercent", 100 * plane.slopeStandardError());
    }

    private static Shape survey(SurveyVersion version) {
        return new Shape()
                .with("version", version.number())
                .with("importedAt", version.recordedAt())
                .with("points", version.points())
                .with("kind", version.kind().map(EnumNames::lowerCamel))
                .with("file", SurveyText.file(version));
    }

    /** What does not lean has no such property. */
    private interface RuleShape {
        @JsonInclude(JsonInclude.Include.NON_ABSENT)
        Optional<Outcome> leans();
    }

    private interface DifficultyShape {
        @JsonProperty("class")
        Optional<DifficultyClass> rank();
    }

    private interface LineShape {
        @JsonProperty("line")
        long number();
    }

    private static final class As<T> extends StdSerializer<T> {
        private final Function<? super T, ?> shape;

        As(Class<T> type, Function<? super T, ?> shape) {
            super(type);
            this.shape = shape;
        }

        @Override
        public void serialize(T value, JsonGenerator out, SerializationContext context) {
            context.writeValue(out, shape.apply(value));
        }
    }
}
