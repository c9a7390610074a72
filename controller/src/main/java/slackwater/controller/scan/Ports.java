package slackwater.controller.scan;

import slackwater.controller.journal.Journal;
import slackwater.controller.latch.LatchStore;
import slackwater.controller.pins.Pins;
import slackwater.controller.watchdog.BoardWatchdog;
import slackwater.controller.watchdog.SampleAge;

/** Everything outside the logic that a scan touches. */
public record Ports(Pins pins, LatchStore store, Journal journal, BoardWatchdog board, SampleAge age) {}
