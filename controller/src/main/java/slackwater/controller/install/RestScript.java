package slackwater.controller.install;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slackwater.controller.gpio.BoardHere;
import slackwater.model.Controller;
import slackwater.model.HoldUp;
import slackwater.model.Output;
import slackwater.model.Rig;

/**
 * A small shell script that puts every output to rest without Java, for the service's stop action: it must work when the
 * program was killed, and be done in well under a second. It speaks both ways of {@code gpioset}, 1.x and 2.x.
 */
public final class RestScript {
    private RestScript() {}

    /**
     * The script for one controller.
     *
     * @throws IllegalArgumentException if an output has no pin; ask {@link #unwired} before
     */
    public static String text(final Rig rig, final Controller controller) {
        final Stream<String> outputs = rig.outputsOf(controller.name()).stream()
                .map(output ->
                        level(output.name(), output.pin(), output.restLevel().isHigh()));
        final Stream<String> relay =
                controller.holdUp().map(HoldUp::pin).stream().map(pin -> level("hold-up", pin, false));
        final String levels = Stream.concat(outputs, relay).collect(Collectors.joining(" "));
        return """
                #!/bin/sh
                # Puts every output of %s to rest, without Java. Made from the rig by "slackwater install":
                # make it again when a pin or a polarity changes. Needs Debian's package gpiod.
                set -u
                label=%s
                levels="%s"
                chip=$(gpiodetect 2>/dev/null | sed -n "s/^\\([^ ]*\\) \\[$label\\].*/\\1/p" | head -n 1)
                if [ -z "$chip" ]; then
                    echo "slackwater: no GPIO chip $label, or gpiodetect is missing (apt-get install gpiod)" >&2
                    exit 1
                fi
                # shellcheck disable=SC2086 # a list of line=level, meant to be split
                case $(gpioset --version 2>/dev/null | head -n 1) in
                    *v1.*) set_all() { gpioset --mode=exit "$chip" "$@"; } ;;
                    *) set_all() { gpioset --chip "$chip" --toggle 0 "$@"; } ;;
                esac
                # shellcheck disable=SC2086
                set_all $levels && exit 0
                # One line that is held or missing must not keep the others from rest.
                failed=0
                for level in $levels; do
                    set_all "$level" || failed=1
                done
                exit "$failed"
                """.formatted(
                        controller.name(), BoardHere.chipOf(controller.board().word()), levels);
    }

    /** Outputs without a pin: a script cannot rest them. */
    public static List<String> unwired(final Rig rig, final Controller controller) {
        final Stream<String> outputs = rig.outputsOf(controller.name()).stream()
                .filter(output -> output.pin().isEmpty())
                .map(Output::name);
        final Stream<String> relay =
                controller.holdUp().filter(one -> one.pin().isEmpty()).stream().map(one -> "hold-up");
        return Stream.concat(outputs, relay).toList();
    }

    private static String level(final String name, final OptionalInt pin, final boolean isHigh) {
        return pin.orElseThrow(() -> new IllegalArgumentException("output=" + name + " has no pin")) + "="
                + (isHigh ? 1 : 0);
    }
}
