package org.cupwright.app.answers.json;

import org.cupwright.app.desk.green.SlopeError;
import org.cupwright.green.MeasuredSharing;
import org.cupwright.policy.EnumNames;

/** Of what the error of a slope is made, as scripts read it. */
final class SlopeErrorShape {
    private SlopeErrorShape() {}

    static Shape of(SlopeError error) {
        return new Shape()
                .with("standardErrorPercent", 100 * error.standardError())
                .with("ownPercent", 100 * error.parts().own())
                .with("sharedPercent", 100 * error.parts().shared())
                .with("shared", sharing(error.sharing()));
    }

    /** What the points of a survey share. */
    static Shape sharing(MeasuredSharing sharing) {
        return new Shape()
                .with("millimetres", 1000 * sharing.sigmaMetres())
                .with(
                        "standardErrorMillimetres",
                        sharing.isMeasured() ? (Double) (1000 * sharing.sigmaErrorMetres()) : null)
                .with("knownBy", EnumNames.lowerCamel(sharing.by()))
                .with("setMillimetres", 1000 * sharing.set().sigmaMetres())
                .with("lengthMetres", sharing.counts().lengthMetres())
                .with("alongWalk", sharing.counts().alongWalk())
                .with("tiltOrDome", sharing.trended());
    }
}
