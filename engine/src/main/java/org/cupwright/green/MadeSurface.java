package org.cupwright.green;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * An invented smooth surface with exact derivatives: a plane, round bumps and hollows, and straight tiers.
 *
 * @param height height of the plane at the origin, m
 * @param planeEast slope of the plane towards east
 * @param planeNorth slope of the plane towards north
 * @param bumps round bumps and hollows
 * @param tiers straight steps
 */
public record MadeSurface(double height, double planeEast, double planeNorth, List<Bump> bumps, List<Tier> tiers)
        implements Surface {
    /** A bell of a height (negative: a hollow) and a standard width about a centre. */
    public record Bump(double east, double north, double height, double width) {}

    /**
     * A step of a height over a width (half a cosine), through a point, rising in the direction of a unit vector.
     *
     * @param east a point in the middle of the step
     */
    public record Tier(double east, double north, double unitEast, double unitNorth, double height, double width) {}

    public static MadeSurface plane(double slopeEast, double slopeNorth) {
        return new MadeSurface(0, slopeEast, slopeNorth, List.of(), List.of());
    }

    /** A gentle seeded surface about the origin: up to 3 % of tilt and bumps of a few centimetres, some metres wide. */
    public static MadeSurface gentle(long seed, double reachMetres) {
        Random random = new Random(seed);
        List<Bump> bumps = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            bumps.add(new Bump(
                    (2 * random.nextDouble() - 1) * reachMetres,
                    (2 * random.nextDouble() - 1) * reachMetres,
                    0.12 * (2 * random.nextDouble() - 1),
                    3 + 4 * random.nextDouble()));
        }
        double tilt = 0.03 * random.nextDouble();
        double turn = 2 * Math.PI * random.nextDouble();
        return new MadeSurface(0, tilt * StrictMath.cos(turn), tilt * StrictMath.sin(turn), bumps, List.of());
    }

    public MadeSurface withTier(Tier tier) {
        List<Tier> more = new ArrayList<>(tiers);
        more.add(tier);
        return new MadeSurface(height, planeEast, planeNorth, bumps, more);
    }

    @Override
    public void at(double east, double north, Jet out) {
        out.z = height + planeEast * east + planeNorth * north;
        out.zx = planeEast;
        out.zy = planeNorth;
        out.zxx = 0;
        out.zxy = 0;
        out.zyy = 0;
        for (Bump bump : bumps) {
            add(bump, east - bump.east, north - bump.north, out);
        }
        for (Tier tier : tiers) {
            add(tier, east - tier.east, north - tier.north, out);
        }
    }

    private static void add(Bump bump, double dx, double dy, Jet out) {
        double square = bump.width * bump.width;
        double z = bump.height * StrictMath.exp(-(dx * dx + dy * dy) / (2 * square));
        out.z += z;
        out.zx += -dx / square * z;
        out.zy += -dy / square * z;
        out.zxx += (dx * dx / square - 1) / square * z;
        out.zxy += dx * dy / (square * square) * z;
        out.zyy += (dy * dy / square - 1) / square * z;
    }

    private static void add(Tier tier, double dx, double dy, Jet out) {
        double along = dx * tier.unitEast + dy * tier.unitNorth;
        if (along >= tier.width / 2) {
            out.z += tier.height;
        }
        if (Math.abs(along) < tier.width / 2) {
            double turn = Math.PI / tier.width;
            double slope = tier.height / 2 * turn * StrictMath.cos(turn * along);
            double bend = -tier.height / 2 * turn * turn * StrictMath.sin(turn * along);
            out.z += tier.height / 2 * (1 + StrictMath.sin(turn * along));
            out.zx += slope * tier.unitEast;
            out.zy += slope * tier.unitNorth;
            out.zxx += bend * tier.unitEast * tier.unitEast;
            out.zxy += bend * tier.unitEast * tier.unitNorth;
            out.zyy += bend * tier.unitNorth * tier.unitNorth;
        }
    }
}
