package org.cupwright.app.sheets;

import java.util.Optional;
import org.cupwright.app.desk.paper.SheetLink;
import org.cupwright.app.texts.Texts;
import org.cupwright.policy.Policy;

/**
 * Where readers find the sheet as it is now, on paper that tells of a morning: a code for telephones, and the same in
 * words. Its styles stand with it: paper without a link is as it was before there were any.
 *
 * @param address the whole of it
 */
record LinkOnPaper(String address, Texts texts) {
    private static final String BESIDE = "float: right; margin: 1.5mm 0 0 4mm;";
    private static final String WORDS = "margin: 0 0 2mm 0; font-size: 9pt;";

    /** Empty while the course gives no sheet out, or nobody has said under which address readers find the office. */
    static Optional<LinkOnPaper> of(Policy policy, Texts texts) {
        return SheetLink.address(policy).map(address -> new LinkOnPaper(address, texts));
    }

    /** What its code takes of a page's height beside words that would stand there anyway, mm: our choice. */
    double moreMillimetres() {
        return Math.max(0, QrCode.of(address).sideMillimetres() - 12);
    }

    /** The code, to the right of what follows. */
    void code(Page page) {
        page.open("div", "code", BESIDE).raw(QrCode.of(address).svg()).close("div");
    }

    /** The words; what follows stands below code and words. */
    void words(Page page) {
        page.open("p", "link", WORDS).text(texts.say("sheet.link") + " ");
        page.open("span", "address", "font-weight: 600;")
                .text(address)
                .close("span")
                .close("p");
        page.open("div", "below", "clear: both;").close("div");
    }
}
