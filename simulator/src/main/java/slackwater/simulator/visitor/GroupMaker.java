package slackwater.simulator.visitor;

import java.util.ArrayList;
import java.util.List;
import slackwater.model.WalkWay;

/** Draws one group after the other. Lengths and heights here: common practice, no source, unless they say otherwise. */
final class GroupMaker {
    private static final double SLOWEST_MPS = 0.5;
    /** A parcel carrier's haste over their own walking speed. */
    private static final double HASTE = 1.2;

    private static final double LINGERS_MIN_S = 10;
    private static final double LINGERS_MAX_S = 90;
    private static final double HANDS_OVER_MIN_S = 5;
    private static final double HANDS_OVER_MAX_S = 15;
    /** Stops and turns happen well inside the way, where there is something to see. */
    private static final double STOPS_FROM = 0.1;

    private static final double STOPS_TO = 0.9;
    private static final double TURNS_FROM = 0.5;

    private final WalkWay way;
    private final Habits habits;
    private final CrowdMaker.Streams streams;
    private final WayLine line;
    private int nextId;
    private int nextGroup;

    GroupMaker(final WalkWay way, final Habits habits, final CrowdMaker.Streams streams) {
        this.way = way;
        this.habits = habits;
        this.streams = streams;
        this.line = WayLine.of(way.points());
    }

    /** One member before they have a way. */
    private record Member(Being being, double heightM, double paceMps) {}

    void addGroup(final long arrivesNs, final List<Visitor> visitors) {
        final CrowdMaker.Streams own = streams.split();
        final List<Member> members = members(own);
        final Ranks ranks = Ranks.of(members.stream().map(Member::being).toList(), way.widthM(), own.places());
        final boolean isParcel = members.get(0).being() == Being.PARCEL_CARRIER;
        final double paceMps =
                members.stream().mapToDouble(Member::paceMps).min().orElseThrow();
        final Outing outing = outing(own, isParcel, paceMps, ranks.depthM());
        for (int i = 0; i < members.size(); i++) {
            final Member member = members.get(i);
            final Course course = Course.of(outing, line.lengthM(), ranks.behindM(i));
            final Course walked = member.being() == Being.SMALL_CHILD ? maybeRuns(course, own.running()) : course;
            final Visitor.Body body = new Visitor.Body(nextId, nextGroup, member.being(), member.heightM());
            visitors.add(walked.walkedBy(body, line, ranks.toLeftM(i), arrivesNs));
            nextId++;
        }
        nextGroup++;
    }

    private List<Member> members(final CrowdMaker.Streams own) {
        final Chance beings = own.beings();
        final boolean isParcel = beings.isIn(habits.parcels());
        final int people = 1 + beings.pick(habits.groupSizes());
        final boolean hasDog = beings.isIn(habits.dogs());
        final List<Member> members = new ArrayList<>();
        if (isParcel) {
            members.add(adult(Being.PARCEL_CARRIER, own, HASTE));
            return members;
        }
        members.add(adult(Being.ADULT, own, 1));
        for (int i = 1; i < people; i++) {
            members.add(beings.isIn(habits.children()) ? child(own) : adult(Being.ADULT, own, 1));
        }
        if (hasDog) {
            members.add(new Member(Being.DOG, beings.between(0.5, 0.6), Double.MAX_VALUE));
        }
        return members;
    }

    private Member adult(final Being being, final CrowdMaker.Streams own, final double haste) {
        final double heightM = StrictMath.max(1.45, 1.70 + 0.09 * own.beings().deviate());
        final Pace pace = own.beings().isIn(habits.over65()) ? Pace.OVER_65 : Pace.YOUNGER;
        return new Member(being, heightM, StrictMath.max(SLOWEST_MPS, haste * pace.drawMps(own.paces())));
    }

    private static Member child(final CrowdMaker.Streams own) {
        final double heightM = own.beings().between(0.95, 1.15);
        final int age = (int) (own.beings().share() * Pace.CHILDREN.size());
        final double paceMps = Pace.CHILDREN.get(age).drawMps(own.paces());
        return new Member(Being.SMALL_CHILD, heightM, StrictMath.max(SLOWEST_MPS, paceMps));
    }

    /** Draws everything, whether it happens or not, so that a larger share adds events and changes none. */
    private Outing outing(
            final CrowdMaker.Streams own, final boolean isParcel, final double paceMps, final double depthM) {
        final double lengthM = line.lengthM();
        final boolean wantsBack = own.returning().isIn(habits.returning());
        final double nearestTurnM = StrictMath.max(TURNS_FROM * lengthM, depthM + 1);
        final double turnM = own.returning().between(nearestTurnM, StrictMath.max(nearestTurnM, lengthM));
        final boolean comesBack = (wantsBack || isParcel) && turnM <= lengthM;
        final double farthestM = comesBack ? turnM : lengthM;
        final boolean wantsToStay = own.lingering().isIn(habits.lingering());
        final double stopM = own.lingering().between(STOPS_FROM, STOPS_TO) * farthestM;
        final double stayS = own.lingering().between(LINGERS_MIN_S, LINGERS_MAX_S);
        if (isParcel) {
            final double handsOverS = own.lingering().between(HANDS_OVER_MIN_S, HANDS_OVER_MAX_S);
            return new Outing(paceMps, farthestM, handsOverS, comesBack ? farthestM : lengthM + depthM, comesBack);
        }
        return new Outing(paceMps, stopM, wantsToStay ? stayS : 0, comesBack ? farthestM : lengthM + depthM, comesBack);
    }

    private Course maybeRuns(final Course course, final Chance running) {
        final boolean runs = running.isIn(habits.running());
        final double speedMps = running.between(1.5, 2.0);
        final double fromShare = running.between(0, 0.5);
        final double runM = running.between(2, 6);
        return runs ? course.runningAhead(fromShare, runM, speedMps) : course;
    }
}
