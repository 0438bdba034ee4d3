package org.cupwright.app.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Duration;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.cupwright.app.session.Role;
import org.cupwright.app.storage.AuditKind;
import org.cupwright.message.Problem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CodesTest {
    @TempDir
    Path files;

    private MadePeople people;

    @BeforeEach
    void open() {
        people = new MadePeople(files);
    }

    @AfterEach
    void close() {
        people.close();
    }

    static void refused(String key, org.assertj.core.api.ThrowableAssert.ThrowingCallable work) {
        assertThatThrownBy(work)
                .isInstanceOfSatisfying(
                        Problem.class,
                        problem -> assertThat(problem.what().key()).isEqualTo("people.problem." + key));
    }

    @Test
    void aCodeIsReadWithoutLookalikes() {
        Set<String> codes = new HashSet<>();
        for (int i = 0; i < 500; i++) {
            String code = OneTimeCode.make(people.random);
            assertThat(code).matches("(?:[2-9A-HJKMNP-Z]{4}-){3}[2-9A-HJKMNP-Z]{4}");
            codes.add(code);
        }
        assertThat(codes).hasSize(500);
    }

    @Test
    void howACodeIsTypedDoesNotMatter() {
        String hash = OneTimeCode.hash("ABCD-2345-EFGH-6789");
        assertThat(OneTimeCode.hash(" abcd2345 efgh–6789\n")).isEqualTo(hash);
        assertThat(OneTimeCode.hash("ABCD-2345-EFGH-6788")).isNotEqualTo(hash);
        assertThat(hash).doesNotContain("ABCD").hasSize(64);
    }

    @Test
    void theFirstCodeMakesTheFirstSuperintendent() {
        NewCode made = people.first().code().orElseThrow();
        assertThat(made.until()).isEqualTo(MadePeople.START.plus(Duration.ofHours(24)));
        assertThat(people.taking().whose(made.code()))
                .contains(new TakeCode.For(Optional.empty(), Role.SUPERINTENDENT));
        Account ida = people.taking().take(made.code().toLowerCase(Locale.ROOT), "  Ida  Ås ", MadePeople.PASSWORD);
        assertThat(ida.name()).isEqualTo("Ida Ås");
        assertThat(ida.role()).isEqualTo(Role.SUPERINTENDENT);
        assertThat(ida.active()).isTrue();
        assertThat(people.first().code()).isEmpty();
        assertThat(people.done()).containsExactly(AuditKind.FIRST_CODE_MADE, AuditKind.PERSON_JOINED);
    }

    @Test
    void aCodeCountsOnce() {
        String code = people.first().code().orElseThrow().code();
        people.taking().take(code, "Ida", MadePeople.PASSWORD);
        refused("code", () -> people.taking().take(code, "Bo", MadePeople.PASSWORD));
        assertThat(people.taking().whose(code)).isEmpty();
    }

    @Test
    void aCodeCountsForADay() {
        String code = people.first().code().orElseThrow().code();
        people.clock.advance(Duration.ofHours(24));
        refused("code", () -> people.taking().take(code, "Ida", MadePeople.PASSWORD));
    }

    @Test
    void aNewCodeReplacesTheOldOne() {
        String old = people.first().code().orElseThrow().code();
        String next = people.first().code().orElseThrow().code();
        refused("code", () -> people.taking().take(old, "Ida", MadePeople.PASSWORD));
        assertThat(people.taking().take(next, "Ida", MadePeople.PASSWORD).name())
                .isEqualTo("Ida");
    }

    /** What is refused takes nothing from the code. */
    @Test
    void aRefusedNameOrPasswordLeavesTheCode() {
        String code = people.first().code().orElseThrow().code();
        refused("nameEmpty", () -> people.taking().take(code, " ", MadePeople.PASSWORD));
        refused("passwordShort", () -> people.taking().take(code, "Ida", "short"));
        refused("code", () -> people.taking().take("2222-2222-2222-2222", "Ida", MadePeople.PASSWORD));
        assertThat(people.taking().take(code, "Ida", MadePeople.PASSWORD).name())
                .isEqualTo("Ida");
    }

    /** Real threads on a real file: however they meet, one code makes one account. */
    @Test
    void ofManyWhoTakeOneCodeAtOnceOneGetsIt() throws Exception {
        String code = people.first().code().orElseThrow().code();
        ExecutorService all = Executors.newFixedThreadPool(6);
        try {
            List<Callable<Boolean>> takers = IntStream.range(0, 6)
                    .<Callable<Boolean>>mapToObj(i -> () -> taken(code, "Ida " + i))
                    .toList();
            int taken = 0;
            for (var taker : all.invokeAll(takers)) {
                taken += taker.get() ? 1 : 0;
            }
            assertThat(taken).isEqualTo(1);
        } finally {
            all.shutdownNow();
        }
        assertThat(people.folder.<Integer>read(stores -> stores.people().all().size()))
                .isEqualTo(1);
    }

    private boolean taken(String code, String name) {
        try {
            people.taking().take(code, name, MadePeople.PASSWORD);
            return true;
        } catch (Problem late) {
            assertThat(late.what().key()).isEqualTo("people.problem.code");
            return false;
        }
    }

    @Test
    void noCodeIsShown() {
        NewCode made = people.first().code().orElseThrow();
        assertThat(made.toString()).doesNotContain(made.code());
        assertThat(people.audit().toString()).doesNotContain(made.code());
        assertThat(people.folder.<String>read(
                        stores -> stores.people().openCodes(MadePeople.START).toString()))
                .doesNotContain(made.code());
    }
}
