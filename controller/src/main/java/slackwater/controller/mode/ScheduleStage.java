package slackwater.controller.mode;

import java.util.Optional;
import slackwater.controller.run.Count;
import slackwater.controller.run.Flag;
import slackwater.controller.run.Layout;
import slackwater.controller.run.RunState;
import slackwater.controller.run.Since;
import slackwater.controller.run.Timer;
import slackwater.model.calendar.ShowCalendar;
import slackwater.model.calendar.ShowCalendar.Window;

/**
 * Says when a schedule opens and closes (S5): opens only when the moment is seen live with trusted time, and once a local
 * date; closes whenever the time says so.
 */
final class ScheduleStage {
    /** More than this between wall time and the run's own time since the last look is a jump, and no moment is seen live. */
    private static final long JUMP_MS = 2_000;

    private static final long NS_PER_MS = 1_000_000L;
    private static final long DAY_MS = 24L * 60 * 60 * 1_000;
    private static final long EPOCH_MAX = Long.MAX_VALUE;

    private final Optional<ShowCalendar> calendar;
    private final Flag hasWindow;
    private final Count fromMs;
    private final Count warmsMs;
    private final Count opensMs;
    private final Count closesMs;
    private final Count day;
    private final Count openedDay;
    private final Timer boundary;
    private final Since lookedAt;
    private final Since lookedMs;
    private final Flag wasTrusted;

    ScheduleStage(final Optional<ShowCalendar> calendar, final Layout layout) {
        this.calendar = calendar;
        hasWindow = layout.flag("schedule.has-window");
        fromMs = layout.count("schedule.from", EPOCH_MAX);
        warmsMs = layout.count("schedule.warms", EPOCH_MAX);
        opensMs = layout.count("schedule.opens", EPOCH_MAX);
        closesMs = layout.count("schedule.closes", EPOCH_MAX);
        day = layout.count("schedule.day", EPOCH_MAX);
        openedDay = layout.count("schedule.opened-day", EPOCH_MAX);
        boundary = layout.timer("schedule.boundary");
        lookedAt = layout.since("schedule.looked-at");
        lookedMs = layout.since("schedule.looked-ms");
        wasTrusted = layout.flag("schedule.was-trusted");
    }

    /** What the schedule asks for in this scan. */
    enum Asks {
        NOTHING,
        WARM,
        OPEN,
        CLOSE
    }

    Asks look(final RunState run, final Wall wall) {
        if (calendar.isEmpty()) {
            return Asks.NOTHING;
        }
        if (!wall.isTrusted()) {
            wasTrusted.set(run, false);
            return Asks.NOTHING;
        }
        final long now = wall.epochMs();
        final boolean isLive = isLive(run, now);
        final long before = lookedMs.atNs(run);
        Asks asks = Asks.NOTHING;
        if (hasWindow.is(run) && now >= closesMs.of(run)) {
            asks = Asks.CLOSE;
        } else if (hasWindow.is(run) && isLive && openedDay.of(run) <= day.of(run)) {
            asks = moment(run, before, now);
        }
        if (asks == Asks.OPEN) {
            openedDay.set(run, day.of(run) + 1);
        }
        remember(run, now, isLive);
        return asks;
    }

    /** The local date after the last opening, in days since 1970; what must outlive a restart. */
    long openedDay(final RunState run) {
        return openedDay.of(run);
    }

    void setOpenedDay(final RunState run, final long dayAfter) {
        openedDay.set(run, Math.max(0, dayAfter));
    }

    private Asks moment(final RunState run, final long before, final long now) {
        if (before < opensMs.of(run) && now >= opensMs.of(run)) {
            return Asks.OPEN;
        }
        return before < warmsMs.of(run) && now >= warmsMs.of(run) ? Asks.WARM : Asks.NOTHING;
    }

    private boolean isLive(final RunState run, final long now) {
        final long wallMs = now - lookedMs.atNs(run);
        final long ownMs = (run.atNs() - lookedAt.atNs(run)) / NS_PER_MS;
        return wasTrusted.is(run) && Math.abs(wallMs - ownMs) <= JUMP_MS;
    }

    private void remember(final RunState run, final long now, final boolean isLive) {
        wasTrusted.set(run, true);
        lookedAt.mark(run);
        lookedMs.markAt(run, now);
        if (!hasWindow.is(run) ? !boundary.isRunning(run) : now >= closesMs.of(run) || now < fromMs.of(run)) {
            findWindow(run, now);
            wakeAtNext(run, now);
        } else if (!isLive || boundary.isDue(run)) {
            wakeAtNext(run, now);
        }
    }

    private void findWindow(final RunState run, final long now) {
        final Optional<Window> window = calendar.flatMap(of -> of.windowAfter(now));
        hasWindow.set(run, window.isPresent());
        fromMs.set(run, now);
        warmsMs.set(run, window.map(Window::warmsMs).orElse(0L));
        opensMs.set(run, window.map(Window::opensMs).orElse(0L));
        closesMs.set(run, window.map(Window::closesMs).orElse(0L));
        day.set(run, window.map(Window::day).orElse(0L));
    }

    /** So that a quiet rig is looked at when the schedule wants something. */
    private void wakeAtNext(final RunState run, final long now) {
        final long next = !hasWindow.is(run)
                ? now + DAY_MS
                : now < warmsMs.of(run)
                        ? warmsMs.of(run)
                        : now < opensMs.of(run) ? opensMs.of(run) : Math.max(now, closesMs.of(run));
        boundary.start(run, (next - now) * NS_PER_MS);
    }
}
