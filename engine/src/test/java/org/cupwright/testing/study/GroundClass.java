package org.cupwright.testing.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.cupwright.green.MadeSurface;
import org.cupwright.green.Surface;
import org.cupwright.green.spline.PriorSurface;

/** The kinds of invented ground on which the errors of a fitted ground are measured. */
public enum GroundClass {
    /** Up to 3 % of tilt, six bumps and hollows of up to 12 cm, three to seven metres in standard width. */
    GENTLE {
        @Override
        Made made(long seed) {
            return Made.of(MadeSurface.gentle(seed, ErrorStudy.HALF_METRES));
        }
    },
    /** Up to 3 % of tilt, ten bumps and hollows of up to 8 cm, one to two metres in standard width. */
    LIVELY {
        @Override
        Made made(long seed) {
            return Made.of(lively(seed));
        }
    },
    /** Gentle ground with waves of 0.8 to 1.2 m, 3 to 10 mm from trough to crest, from all directions on it. */
    MICRO {
        @Override
        Made made(long seed) {
            return Made.of(MicroRelief.on(MadeSurface.gentle(seed, ErrorStudy.HALF_METRES), seed));
        }
    },
    /** Gentle ground with a step of 0.3 m in 2 m, half a cosine, through the middle in any direction. */
    TIER {
        @Override
        Made made(long seed) {
            double turn = 2 * Math.PI * new Random(seed).nextDouble();
            MadeSurface.Tier tier = new MadeSurface.Tier(0, 0, StrictMath.cos(turn), StrictMath.sin(turn), 0.3, 2);
            MadeSurface surface =
                    MadeSurface.gentle(seed, ErrorStudy.HALF_METRES).withTier(tier);
            return new Made(surface, List.of(tier));
        }
    },
    /**
     * What the spline takes ground to be before it sees any: normal second differences of 1 to 5 mm on knots of 0.5 m.
     */
    PRIOR {
        @Override
        Made made(long seed) {
            double scale = 0.001 * StrictMath.pow(5, new Random(seed).nextDouble());
            return Made.of(PriorSurface.drawn(seed, ErrorStudy.HALF_METRES + ErrorStudy.BEYOND_METRES, scale));
        }
    };

    /** Ground and the steps in it. */
    record Made(Surface surface, List<MadeSurface.Tier> tiers) {
        static Made of(Surface surface) {
            return new Made(surface, List.of());
        }
    }

    abstract Made made(long seed);

    private static MadeSurface lively(long seed) {
        Random random = new Random(seed);
        List<MadeSurface.Bump> bumps = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            double east = ErrorStudy.HALF_METRES * (2 * random.nextDouble() - 1);
            double north = ErrorStudy.HALF_METRES * (2 * random.nextDouble() - 1);
            double height = 0.08 * (2 * random.nextDouble() - 1);
            bumps.add(new MadeSurface.Bump(east, north, height, 1 + random.nextDouble()));
        }
        MadeSurface tilt = MadeSurface.gentle(seed, ErrorStudy.HALF_METRES);
        return new MadeSurface(0, tilt.planeEast(), tilt.planeNorth(), bumps, List.of());
    }
}
