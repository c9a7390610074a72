package slackwater.controller.live;

/**
 * Time as a thread that looks at intervals has lived it. When the whole process was stopped and goes on, the time between two
 * looks counts only as much as a look may take: what was frozen together with its watcher is no hung scan, and the hold-up
 * pulses deal with the gap (S2).
 */
final class AwakeTime {
    private final long mostNs;
    private long lastNs;
    private long awakeNs;

    /**
     * @param startNs monotonic time now
     * @param mostNs what two looks may lie apart at most
     */
    AwakeTime(final long startNs, final long mostNs) {
        lastNs = startNs;
        this.mostNs = mostNs;
    }

    long at(final long nowNs) {
        awakeNs += Math.min(mostNs, nowNs - lastNs);
        lastNs = nowNs;
        return awakeNs;
    }
}
