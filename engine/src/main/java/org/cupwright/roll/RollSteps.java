package org.cupwright.roll;

/**
 * How finely a roll is computed. The standard values are the project's own choice, made so that the stop point is right
 * to a fraction of a millimetre on a green; smaller ones are for tests.
 *
 * @param stepMetres length of a step along the ground while the ball runs freely
 * @param greatestSpeedShare greatest share of its speed that a ball may lose, gain or turn aside in one step; makes
 *     steps shorter where a slow ball bends or nears its stop
 * @param finishMetres when no more than this is left to roll, the rest is taken from the plane's closed form
 */
public record RollSteps(double stepMetres, double greatestSpeedShare, double finishMetres) {
    public static final RollSteps STANDARD = new RollSteps(0.2, 0.25, 0.003);

    public RollSteps {
        if (!(stepMetres > 0 && greatestSpeedShare > 0 && greatestSpeedShare < 1 && finishMetres > 0)) {
            throw new IllegalArgumentException("steps of " + stepMetres + " m, speed share " + greatestSpeedShare
                    + ", finish " + finishMetres + " m: all must be above 0, the share below 1");
        }
    }
}
