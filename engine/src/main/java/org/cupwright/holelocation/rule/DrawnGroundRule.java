package org.cupwright.holelocation.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.cupwright.green.DrawnItem;
import org.cupwright.green.PersonsOpinion;
import org.cupwright.green.PersonsOpinion.Kind;
import org.cupwright.holelocation.DrawnPolicy;
import org.cupwright.holelocation.DrawnPolicy.OnBadGround;
import org.cupwright.holelocation.Outcome;
import org.cupwright.holelocation.RuleId;
import org.cupwright.holelocation.RuleResult;
import org.cupwright.message.Message;
import org.cupwright.policy.Policy;

/**
 * What people who know the green say of the position.
 *
 * <p>On ground drawn as bad, and nearer to it than the ground about a hole, it fails, or is a caution where the course has set it
 * so. On good ground and by a usual spot it passes. Where good ground is drawn and the position lies off it, that is a caution, but
 * only where nobody measured the slope: there people's word is all there is to go by. A good word changes no other rule's answer.
 *
 * <p>The sentences {@code bad}, {@code good} and {@code usual} have for each of person, day and reason a 1 when it is known, else a
 * 0, followed by it.
 */
final class DrawnGroundRule implements Rule {
    private final DrawnOpinions words;
    private final Outcome onBad;

    DrawnGroundRule(DrawnOpinions words, Policy policy) {
        this.words = words;
        this.onBad = policy.get(DrawnPolicy.BAD_GROUND) == OnBadGround.FAIL ? Outcome.FAIL : Outcome.CAUTION;
    }

    @Override
    public RuleResult judge(JudgedPosition judged) {
        if (words.isEmpty()) {
            return saying("none", Outcome.PASS);
        }
        Optional<DrawnItem> drawn = words.at(judged.position());
        if (drawn.isPresent()) {
            return said(drawn.get(), judged);
        }
        return words.anyGoodGround() && !judged.own().known()
                ? saying("offGood", Outcome.CAUTION)
                : saying("unsaid", Outcome.PASS);
    }

    private RuleResult said(DrawnItem drawn, JudgedPosition judged) {
        PersonsOpinion word = drawn.word();
        if (word.kind() == Kind.BAD) {
            double metres = drawn.distanceMetres(judged.position());
            return result(
                    message("bad", word),
                    onBad,
                    OptionalDouble.of(metres),
                    OptionalDouble.of(words.badMetres()),
                    OptionalDouble.of(metres - words.badMetres()));
        }
        Message says = word.kind() == Kind.USUAL ? message("usual", word) : message("good", word);
        return result(says, Outcome.PASS, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static RuleResult saying(String what, Outcome outcome) {
        Message says = Message.of("rule." + RuleId.DRAWN_GROUND.id() + "." + what);
        return result(says, outcome, OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    private static RuleResult result(
            Message says, Outcome outcome, OptionalDouble value, OptionalDouble limit, OptionalDouble margin) {
        return new RuleResult(
                RuleId.DRAWN_GROUND,
                value,
                "m",
                limit,
                margin,
                OptionalDouble.empty(),
                outcome,
                Optional.empty(),
                says);
    }

    private static Message message(String what, PersonsOpinion word) {
        List<Message.Argument> arguments = new ArrayList<>();
        add(arguments, word.person().map(Message.Name::new));
        add(arguments, word.date().map(Message.Day::new));
        add(arguments, word.reason().map(Message.Name::new));
        return new Message("rule." + RuleId.DRAWN_GROUND.id() + "." + what, arguments);
    }

    private static void add(List<Message.Argument> arguments, Optional<? extends Message.Argument> known) {
        arguments.add(new Message.Count(known.isPresent() ? 1 : 0));
        arguments.add(known.isPresent() ? known.get() : new Message.Name(""));
    }
}
