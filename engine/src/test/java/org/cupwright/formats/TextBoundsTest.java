package org.cupwright.formats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.cupwright.finding.Finding;
import org.cupwright.finding.FindingKind;
import org.cupwright.finding.UnreadableFile;
import org.cupwright.finding.Where;
import org.cupwright.message.Message.Count;
import org.cupwright.message.Message.Name;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The last byte, character or place that is taken, and the first that is not. */
class TextBoundsTest {
    private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private static InputStream bytes(String text) {
        return new ByteArrayInputStream(text.getBytes(StandardCharsets.ISO_8859_1));
    }

    private static Finding trouble(ThrowingCallable reading) {
        return catchThrowableOfType(UnreadableFile.class, reading).finding();
    }

    @Test
    void aStreamEndsInAFailureAtTheFirstByteTooMany() throws IOException {
        InputStream two = new BoundedInput(bytes("ab"), 2);
        assertThat(two.read()).isEqualTo('a');
        assertThat(two.read()).isEqualTo('b');
        assertThat(two.read()).isEqualTo(-1);
        InputStream three = new BoundedInput(bytes("abc"), 2);
        assertThat(three.read(new byte[2], 0, 2)).isEqualTo(2);
        Finding finding = trouble(three::read);
        assertThat(finding.kind()).isEqualTo(FindingKind.FILE_TOO_LARGE);
        assertThat(finding.value()).isEqualTo(new Count(2));
        assertThat(trouble(() -> new BoundedInput(bytes("abc"), 2).read(new byte[3], 0, 3))
                        .kind())
                .isEqualTo(FindingKind.FILE_TOO_LARGE);
        assertThat(new BoundedInput(bytes(""), 0).read(new byte[3], 0, 3)).isEqualTo(-1);
    }

    @Test
    void whatIsSkippedCountsAndNobodyGoesBack() throws IOException {
        BoundedInput input = new BoundedInput(bytes("abcd"), 3);
        assertThat(input.skip(3)).isEqualTo(3);
        assertThat(input.markSupported()).isFalse();
        assertThat(trouble(() -> input.skip(1)).kind()).isEqualTo(FindingKind.FILE_TOO_LARGE);
    }

    @Test
    void aByteOrderMarkIsPassedOver() throws IOException {
        String mark = new String(MARK, StandardCharsets.ISO_8859_1);
        assertThat(BoundedInput.withoutMark(bytes(mark + "ab"), 5)).hasBinaryContent(new byte[] {'a', 'b'});
        assertThat(BoundedInput.withoutMark(bytes(mark), 5)).isEmpty();
        assertThat(BoundedInput.text(bytes(mark + "x"), 9).readLine()).isEqualTo("x");
    }

    @Test
    void whatIsNoByteOrderMarkStays() throws IOException {
        for (int changed = 0; changed < 3; changed++) {
            byte[] almost = MARK.clone();
            almost[changed] = 'x';
            assertThat(BoundedInput.withoutMark(new ByteArrayInputStream(almost), 5))
                    .hasBinaryContent(almost);
        }
        assertThat(BoundedInput.withoutMark(bytes("ab"), 5)).hasBinaryContent(new byte[] {'a', 'b'});
    }

    @Test
    void linesThatSaySomethingAreCountedAsAnEditorCountsThem() throws IOException {
        TextLines lines = new TextLines(bytes("# invented\n\n  \nfirst\n #\nsecond"), 100);
        assertThat(lines.next()).contains("first");
        assertThat(lines.number()).isEqualTo(4);
        assertThat(lines.next()).contains("second");
        assertThat(lines.number()).isEqualTo(6);
        assertThat(lines.next()).isEmpty();
    }

    @Test
    void aLineOfFourThousandAndNinetySixCharactersIsTheLongest() throws IOException {
        String longest = "x".repeat(4096);
        assertThat(new TextLines(bytes(longest + "\n"), 9000).next()).contains(longest);
        TextLines lines = new TextLines(bytes("1\n" + longest + "x"), 9000);
        assertThat(lines.next()).contains("1");
        Finding finding = trouble(lines::next);
        assertThat(finding.kind()).isEqualTo(FindingKind.NOT_TEXT);
        assertThat(finding.where()).isEqualTo(Where.line(2));
        assertThat(trouble(() -> new TextLines(bytes("a\u0000b"), 9).next()).value())
                .isEqualTo(new Name("a"));
    }

    @Test
    void aNulCharacterIsNoTextWhereverItStands() {
        assertThat(trouble(() -> new TextLines(bytes("\u0000"), 9).next()).kind())
                .isEqualTo(FindingKind.NOT_TEXT);
    }

    @Test
    void anExcerptHasSixtyCharactersAtMost() {
        assertThat(Excerpt.of(" " + "x".repeat(60))).isEqualTo("x".repeat(60));
        assertThat(Excerpt.of("x".repeat(61))).isEqualTo("x".repeat(59) + "…");
        assertThat(Excerpt.of("a\u0001b")).isEqualTo("a·b");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"';1' | SEMICOLON", "',1,2' | COMMA", "1,5 2,5 | COMMA", "1,5 2,5 x | BLANKS", "1,5 a 2 | COMMA"})
    void aSeparatorMayStandFirst(String line, Separator separator) {
        assertThat(Separator.of(line)).isEqualTo(separator);
    }

    @ParameterizedTest
    @CsvSource({
        "-180, 10, 32601",
        "-174.001, 10, 32601",
        "-174, 10, 32602",
        "9, 0, 32632",
        "9, -0.001, 32732",
        "180, 10, 32660",
        "-180.5, 10, 32601"
    })
    void zonesAreSixDegreesWideAndTheEquatorIsNorth(double longitude, double latitude, int epsg) {
        assertThat(CoordinateFrame.utmOf(longitude, latitude).epsg()).isEqualTo(epsg);
    }

    @Test
    void framesOfOneCodeAreEqual() {
        CoordinateFrame frame = CoordinateFrame.of(25832);
        assertThat(frame).isEqualTo(CoordinateFrame.of(25832)).hasSameHashCodeAs(CoordinateFrame.of(25832));
        assertThat(frame).isNotEqualTo(CoordinateFrame.of(25833)).isNotEqualTo("EPSG:25832");
        assertThat(frame.hashCode()).isNotEqualTo(CoordinateFrame.of(25833).hashCode());
        assertThat(frame).hasToString("EPSG:25832");
        assertThat(frame.isGeographic()).isFalse();
    }

    @Test
    void aFrameHasItsUnitInMetres() {
        // EPSG 2263 is in US survey feet of 1200/3937 m
        assertThat(CoordinateFrame.of(2263).unitMetres()).isCloseTo(1200.0 / 3937, within(1e-12));
        assertThat(CoordinateFrame.of(25832).unitMetres()).isEqualTo(1);
        assertThat(CoordinateFrame.of(CoordinateFrame.WGS84).unitMetres()).isEqualTo(1);
    }

    @Test
    void degreesThatAreNoneAreOutside() {
        Projection projection = Projection.between(CoordinateFrame.of(4326), CoordinateFrame.of(32631));
        assertThat(projection.apply(3, 52).getX()).isCloseTo(500_000, within(1e-6));
        assertThat(trouble(() -> projection.apply(360.5, 52)).kind()).isEqualTo(FindingKind.OUTSIDE_FRAME);
        assertThat(trouble(() -> projection.apply(3, 90.5)).where()).isEqualTo(Where.file());
    }
}
